package io.axiswright.engine.controlpower;

import static io.axiswright.engine.finding.FindingCode.CONTROL_BRAKE_RELEASE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_HOLD_UP_SHORT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_HOLD_UP;
import static io.axiswright.engine.finding.FindingCode.CONTROL_KEEP_ALIVE_SHORT;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_CONDUCTOR;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_NOT_CLEARED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_RATING;
import static io.axiswright.engine.finding.FindingCode.CONTROL_OUTPUT_UNPROTECTED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_REDUNDANCY_NONE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_START_LOCK;
import static io.axiswright.engine.finding.FindingCode.CONTROL_STOP_OUTLASTS_HOLD_UP;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_MAINS_VOLTAGE;
import static io.axiswright.engine.finding.FindingCode.CONTROL_SUPPLY_OVERLOADED;
import static io.axiswright.engine.finding.FindingCode.CONTROL_VOLTAGE_ABOVE_BAND;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What there is to remark about one control supply. */
final class SupplyFindings {

    private static final String ITEM = "catalogue data of the item";
    private static final String SHORT_CIRCUIT = "IEC 60364-4-43 434.5.2, from memory";
    private static final String DROP_OUT = "IEC 60204-1 4.3.3, from memory";

    private final String subject;
    private final List<Finding> findings = new ArrayList<>();

    private SupplyFindings(String subject) {
        this.subject = subject;
    }

    static List<Finding> of(
            SupplyGroup group, PlacedControlSupply placed, Buffering buffering, ControlPowerRequest request) {
        SupplyFindings notes = new SupplyFindings(placed.id());
        notes.load(group);
        notes.voltages(group, request.mains());
        notes.circuits(group, request);
        notes.care(group, placed.holdUp(), request);
        notes.holdUp(group, buffering, request);
        return notes.findings;
    }

    private void load(SupplyGroup group) {
        Current available = new Current(group.availableCurrent());
        if (!group.suffices()) {
            add(CONTROL_SUPPLY_OVERLOADED, ControlFindings.PRACTICE, new Current(group.neededCurrent()), available);
        }
        if (!group.isRedundantEnough()) {
            add(
                    CONTROL_REDUNDANCY_NONE,
                    ControlFindings.PRACTICE,
                    new Ratio(group.supply().mostParallel()),
                    new Ratio(group.wanted() + 1));
        }
        if (!group.starts()) {
            add(
                    CONTROL_START_LOCK,
                    "derived: the output rises past V only if it gives more than the sum of P/V of what has started",
                    new Current(group.startCurrent()),
                    available);
        }
    }

    private void voltages(SupplyGroup group, Mains mains) {
        Voltage output = group.supply().outputVoltage();
        if (output.si() > ControlConstants.BAND_HIGH) {
            add(
                    CONTROL_VOLTAGE_ABOVE_BAND,
                    "IEC 61131-2 (24 V DC, -15 % / +20 %), from memory",
                    output,
                    new Voltage(ControlConstants.BAND_HIGH));
        }
        if (!group.matchesMains()) {
            add(
                    CONTROL_SUPPLY_MAINS_VOLTAGE,
                    ControlFindings.PRACTICE,
                    mains.voltage(),
                    group.supply().ratedVoltage());
        }
    }

    /** Each output circuit; of several that its protection misses the first counts. */
    private void circuits(SupplyGroup group, ControlPowerRequest request) {
        if (request.protections().isEmpty()) {
            add(CONTROL_OUTPUT_UNPROTECTED, SHORT_CIRCUIT, new Current(most(group)), null);
        }
        for (CircuitProtection circuit : group.protections()) {
            Current rating = circuit.device().rating();
            String chain = circuit.plan().network().chain();
            if (!circuit.carries()) {
                double worst = circuit.plan().currents().worstCurrent();
                add(chain, CONTROL_OUTPUT_RATING, ITEM, new Current(worst), rating);
            } else if (!circuit.clears()) {
                add(
                        circuit.subject(),
                        CONTROL_OUTPUT_NOT_CLEARED,
                        SHORT_CIRCUIT,
                        new Current(circuit.faultCurrent()),
                        circuit.device().operatingCurrent(new Time(ControlConstants.CLEARING_TIME)));
            } else if (!circuit.suitsConductors()) {
                add(
                        chain,
                        CONTROL_OUTPUT_CONDUCTOR,
                        "IEC 60204-1:2016 Table 6 (method B2) and Table D.1",
                        rating,
                        new Current(circuit.ampacity().orElse(0)));
            }
        }
    }

    private static double most(SupplyGroup group) {
        var overload = group.supply().overload();
        return overload == null
                ? group.availableCurrent()
                : Math.max(group.availableCurrent(), overload.current().si() * group.count());
    }

    private void care(SupplyGroup group, Time holdUp, ControlPowerRequest request) {
        if (holdUp.si() < ControlConstants.DROP_OUT) {
            add(CONTROL_HOLD_UP_SHORT, DROP_OUT, holdUp, new Time(ControlConstants.DROP_OUT));
        }
        List<ControlLoad> loads = group.plans().stream()
                .flatMap(plan -> plan.network().gateways().stream())
                .flatMap(node -> node.loads().stream())
                .toList();
        long keptAlive = loads.stream().filter(ControlLoad::keepAlive).count();
        if (keptAlive > 0 && request.spec().keepAliveTime() == null) {
            add(CONTROL_KEEP_ALIVE_HOLD_UP, DROP_OUT, holdUp, new Ratio(keptAlive));
        }
        long brakes = loads.stream().filter(load -> load.brake() != null).count();
        if (brakes > 0) {
            add(CONTROL_BRAKE_RELEASE, "ISO 12100 (gravity and stored energy), from memory", new Ratio(brakes), null);
        }
    }

    /**
     * A controlled stop that begins as mains is lost still needs its controls until it ends: the one that lacks most. Each axis
     * that has to keep its position.
     */
    private void holdUp(SupplyGroup group, Buffering buffering, ControlPowerRequest request) {
        List<Terminal> terminals = group.plans().stream()
                .flatMap(plan -> plan.network().terminals().stream())
                .toList();
        IntStream.range(0, terminals.size())
                .filter(k -> buffering.inBand()[k] < terminals.get(k).restTime())
                .boxed()
                .max(Comparator.comparingDouble((Integer k) ->
                                terminals.get(k).restTime() - buffering.inBand()[k])
                        .thenComparing(Comparator.reverseOrder()))
                .ifPresent(k -> add(
                        CONTROL_STOP_OUTLASTS_HOLD_UP,
                        "derived: reaction, deceleration and brake engagement of the stop that lacks most",
                        new Time(buffering.inBand()[k]),
                        new Time(terminals.get(k).restTime())));
        Time keepAlive = request.spec().keepAliveTime();
        for (int k = 0; k < terminals.size() && keepAlive != null; k++) {
            if (terminals.get(k).keepsAlive() && buffering.inBand()[k] < keepAlive.si()) {
                add(
                        terminals.get(k).subject(),
                        CONTROL_KEEP_ALIVE_SHORT,
                        "derived: time in band after mains is lost",
                        new Time(buffering.inBand()[k]),
                        keepAlive);
            }
        }
    }

    private void add(FindingCode code, String clause, Quantity value, @Nullable Quantity limit) {
        add(subject, code, clause, value, limit);
    }

    private void add(String about, FindingCode code, String clause, Quantity value, @Nullable Quantity limit) {
        findings.add(code.at(about, ControlFindings.POINTER, clause, value, limit));
    }
}
