package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How long the terminals of one control supply last after mains is lost, and the buffer that makes it long enough: the
 * cheapest of the catalogue, and none where none is needed or none suffices.
 *
 * @param buffer the buffer; none if absent
 * @param inBand s, by terminal, chain by chain
 * @param needed s, likewise; 0 if nothing is asked
 */
record Buffering(Optional<Buffer> buffer, double[] inBand, double[] needed) {

    static Buffering of(SupplyGroup group, double ownTime, ControlPowerRequest request) {
        Temperature conductor = Conductors.temperature(request.site());
        double[] needed = needed(group, request);
        if (!group.plans().stream().allMatch(ChainPlan::isCabled)) {
            return new Buffering(Optional.empty(), new double[needed.length], needed);
        }
        var discharge = new Discharge(group, conductor, ownTime, longestStop(group));
        var bare = new Buffering(Optional.empty(), discharge.inBand(Optional.empty()), needed);
        if (bare.suffices()) {
            return bare;
        }
        return request.buffers().stream()
                .flatMap(unit -> smallest(unit, discharge, needed).stream())
                .min(Comparator.comparing(
                                (Buffering b) -> b.buffer().orElseThrow().price())
                        .thenComparing(b -> b.buffer().orElseThrow().unit().id()))
                .orElse(bare);
    }

    boolean suffices() {
        return IntStream.range(0, needed.length).allMatch(k -> inBand[k] >= needed[k]);
    }

    /** For every terminal, chain by chain. */
    List<HoldUp> results(SupplyGroup group, String supply) {
        List<HoldUp> all = new ArrayList<>();
        for (ChainPlan plan : group.plans()) {
            for (Terminal terminal : plan.network().terminals()) {
                int k = all.size();
                all.add(new HoldUp(
                        terminal.subject(),
                        terminal.kind(),
                        supply,
                        new Time(inBand[k]),
                        needed[k] > 0 ? new Time(needed[k]) : null));
            }
        }
        return all;
    }

    private static Optional<Buffering> smallest(BufferUnit unit, Discharge discharge, double[] needed) {
        return IntStream.rangeClosed(1, unit.maxParallel())
                .mapToObj(count -> Optional.of(new Buffer(unit, count)))
                .map(buffer -> new Buffering(buffer, discharge.inBand(buffer), needed))
                .filter(Buffering::suffices)
                .findFirst();
    }

    private static double longestStop(SupplyGroup group) {
        return group.plans().stream()
                .flatMap(plan -> plan.network().terminals().stream())
                .mapToDouble(Terminal::restTime)
                .max()
                .orElse(0);
    }

    /** A gateway is needed as long as anything behind it. */
    private static double[] needed(SupplyGroup group, ControlPowerRequest request) {
        Time keepAlive = request.spec().keepAliveTime();
        double kept = keepAlive == null ? 0 : keepAlive.si();
        return group.plans().stream()
                .map(ChainPlan::network)
                .flatMapToDouble(network -> IntStream.range(
                                0, network.terminals().size())
                        .mapToDouble(k -> IntStream.range(k, network.terminals().size())
                                .filter(j -> network.isBehind(j, k))
                                .mapToObj(j -> network.terminals().get(j))
                                .mapToDouble(t -> Math.max(t.restTime(), t.keepsAlive() ? kept : 0))
                                .max()
                                .orElse(0)))
                .toArray();
    }
}
