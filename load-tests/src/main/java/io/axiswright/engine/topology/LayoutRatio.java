package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;

import io.axiswright.engine.quantity.Time;

/**
 * Planning machines of 16, 48 and 128 axes against the same solver on a textbook model of the same problem with the same limit of
 * work, side by side in one run. Stands in the engine's package, whose models are not public.
 */
public final class LayoutRatio {

    private static final double LIMIT = 2;
    private static final double MOST_GAP = 0.005;
    private static final long[] SEEDS = {7, 8, 9};

    private LayoutRatio() {}

    /** Whether 16 and 48 axes are proven optimal, 128 planned within half a per cent, and no layout is dearer than the textbook's. */
    public static boolean holds() {
        new LayoutPlanning().plan(request(16, 5, 4, 1)); // loads the natives
        return machines(16, 5, 4, 0) & machines(48, 16, 4, 0) & machines(128, 32, 6, MOST_GAP);
    }

    private static TopologyRequest request(int axes, int places, int ports, long seed) {
        TopologyRequests machine = TopologyRequests.machine(axes, places, ports, seed);
        machine.searchLimit = new Time(LIMIT);
        return machine.build();
    }

    private static boolean machines(int axes, int places, int ports, double allowed) {
        boolean holds = true;
        for (long seed : SEEDS) {
            TopologyRequest request = request(axes, places, ports, seed);
            var reader = new ModelReader(request, new Routes(request));
            LayoutModel model = reader.read();
            long start = System.nanoTime();
            TopologyResult ours = new LayoutPlanning().plan(request);
            long middle = System.nanoTime();
            TextbookModel.Answer textbook = TextbookModel.solve(model, LIMIT);
            long end = System.nanoTime();
            MoneyScale money = reader.money();
            double cost = requireNonNull(ours.cost()).amount().doubleValue();
            double gap = requireNonNull(ours.gap()).value();
            Long found = textbook.cost();
            double theirs = found == null
                    ? Double.POSITIVE_INFINITY
                    : money.money(found).amount().doubleValue();
            double theirBound = money.money(textbook.bound()).amount().doubleValue();
            print(
                    "%3d axes, seed %d: ours %.2f, gap %.2f %%, %.0f ms; textbook %.2f, gap %.2f %%, %.0f ms; %.2f of its time%n",
                    axes,
                    seed,
                    cost,
                    100 * gap,
                    (middle - start) / 1e6,
                    theirs,
                    found == null ? 100 : 100 * (theirs - theirBound) / theirs,
                    (end - middle) / 1e6,
                    (double) (middle - start) / (end - middle));
            holds &= gap <= allowed && cost <= theirs + 1e-6;
        }
        print("%d axes: a gap of at most %.1f %% is allowed: %s%n", axes, 100 * allowed, holds ? "held" : "missed");
        return holds;
    }

    @SuppressWarnings({"SystemOut", "AnnotateFormatMethod"}) // a report for the terminal
    private static void print(String format, Object... values) {
        System.out.printf(format, values);
    }
}
