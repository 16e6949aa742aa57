package io.axiswright.engine.fault;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.supply.Connection;
import java.util.List;
import java.util.Random;

/** A distribution by chance. */
record RandomSites(Mains mains, List<String> sizes, double feederMetres, double branchMetres) {

    static final List<String> METRIC =
            List.of("1.5 mm2", "2.5 mm2", "4 mm2", "6 mm2", "10 mm2", "16 mm2", "25 mm2", "35 mm2");
    private static final SupplySystem[] SYSTEMS = SupplySystem.values();

    static RandomSites of(Random random) {
        double highest = Math.exp(Math.log(500) + random.nextDouble() * Math.log(100));
        var mains = Sites.mains(
                SYSTEMS[random.nextInt(SYSTEMS.length)],
                List.of(120.0, 208.0, 230.0, 400.0, 480.0).get(random.nextInt(5)),
                highest,
                highest * (0.3 + 0.7 * random.nextDouble()),
                random.nextDouble() * 3,
                SystemEarthing.TN,
                0.01 + random.nextDouble());
        return new RandomSites(
                mains,
                List.of(METRIC.get(random.nextInt(METRIC.size())), METRIC.get(random.nextInt(METRIC.size()))),
                random.nextDouble() * 60,
                random.nextDouble() * 60);
    }

    /** The connection of the whole supply. */
    Connection whole() {
        return switch (mains.system()) {
            case ONE_PHASE_TWO_WIRE -> Connection.LINE_TO_NEUTRAL;
            case ONE_PHASE_THREE_WIRE -> Connection.LINE_TO_LINE;
            case THREE_PHASE_THREE_WIRE, THREE_PHASE_FOUR_WIRE -> Connection.THREE_PHASE;
        };
    }

    private boolean neutral() {
        return mains.system() != SupplySystem.THREE_PHASE_THREE_WIRE;
    }

    FaultResult study() {
        var feeder = circuit("feeder", whole(), sizes.getFirst(), feederMetres, "mains panel");
        var whole = circuit("C1", whole(), sizes.getLast(), branchMetres, "load");
        var branches = neutral()
                ? List.of(whole, circuit("C2", Connection.LINE_TO_NEUTRAL, sizes.getLast(), branchMetres, "single"))
                : List.of(whole);
        return new FaultStudy().study(Sites.iec(mains, feeder, branches.toArray(FaultCircuit[]::new)));
    }

    private FaultCircuit circuit(String id, Connection connection, String size, double metres, String end) {
        var plain = Sites.branch(id, connection, size, null, Sites.unrated(end, metres));
        return new FaultCircuit(
                id,
                plain.pointer(),
                connection,
                neutral() && (id.equals("feeder") || connection == Connection.LINE_TO_NEUTRAL),
                plain.conductor(),
                plain.protectiveConductor(),
                null,
                plain.ends());
    }
}
