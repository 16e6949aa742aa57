package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_HOLD_UP_SHORT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_HOLD_UP;
import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_SHORT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_STOP_OUTLASTS_HOLD_UP;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What there is to remark about how long what hangs on one control supply lasts after mains is lost. */
final class HoldUpFindings {

    private static final String DROP_OUT = "IEC 60204-1 4.3.3, from memory";

    private final PlacedControlSupply placed;
    private final Buffering buffering;
    private final List<Terminal> terminals;
    private final List<Finding> findings = new ArrayList<>();

    private HoldUpFindings(SupplyGroup group, PlacedControlSupply placed, Buffering buffering) {
        this.placed = placed;
        this.buffering = buffering;
        this.terminals = group.plans().stream()
                .flatMap(plan -> plan.network().terminals().stream())
                .toList();
    }

    static List<Finding> of(
            SupplyGroup group, PlacedControlSupply placed, Buffering buffering, ControlPowerRequest request) {
        var notes = new HoldUpFindings(group, placed, buffering);
        notes.interruption();
        Time keepAlive = request.spec().keepAliveTime();
        if (keepAlive == null) {
            notes.keptAlive();
        } else {
            notes.keptAlive(keepAlive);
        }
        notes.stop();
        return notes.findings;
    }

    private void interruption() {
        if (placed.holdUp().si() < ControlConstants.DROP_OUT && placed.buffer() == null) {
            findings.add(CONTROL_HOLD_UP_SHORT.at(
                    placed.id(),
                    ControlFindings.POINTER,
                    DROP_OUT,
                    placed.holdUp(),
                    new Time(ControlConstants.DROP_OUT)));
        }
    }

    /** How long positions last, where it is not said how long they have to. */
    private void keptAlive() {
        int[] kept = IntStream.range(0, terminals.size())
                .filter(k -> terminals.get(k).keepsAlive())
                .toArray();
        IntStream.of(kept)
                .mapToDouble(k -> buffering.inBand()[k])
                .min()
                .ifPresent(least -> findings.add(CONTROL_KEEP_ALIVE_HOLD_UP.at(
                        placed.id(), ControlFindings.POINTER, DROP_OUT, new Time(least), new Ratio(kept.length))));
    }

    private void keptAlive(Time needed) {
        for (int k = 0; k < terminals.size(); k++) {
            Terminal terminal = terminals.get(k);
            if (terminal.keepsAlive() && buffering.inBand()[k] < needed.si()) {
                findings.add(CONTROL_KEEP_ALIVE_SHORT.at(
                        terminal.subject(),
                        terminal.pointer(),
                        "derived: time in band after mains is lost",
                        new Time(buffering.inBand()[k]),
                        needed));
            }
        }
    }

    /** A controlled stop that begins as mains is lost still needs its controls until it ends: the one that lacks most. */
    private void stop() {
        IntStream.range(0, terminals.size())
                .filter(k -> lack(k) > 0)
                .boxed()
                .max(Comparator.comparingDouble(this::lack).thenComparing(Comparator.reverseOrder()))
                .ifPresent(k -> findings.add(CONTROL_STOP_OUTLASTS_HOLD_UP.at(
                        placed.id(),
                        ControlFindings.POINTER,
                        "derived: reaction, deceleration and brake engagement of the stop that lacks most",
                        new Time(buffering.inBand()[k]),
                        new Time(terminals.get(k).restTime()))));
    }

    private double lack(int terminal) {
        return terminals.get(terminal).restTime() - buffering.inBand()[terminal];
    }
}
