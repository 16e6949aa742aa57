package io.axiswright.engine.braking;

import java.util.List;

/**
 * The bus from event to event against a general-purpose adaptive integrator with event location (Dormand-Prince 8(5,3)), side
 * by side in one run: a cycle of three axes with a chopper at work, and a load that runs down under it. Stands in the engine's
 * package, whose simulation is not public.
 */
public final class BrakingRatio {

    private static final double LEAST = 200;
    private static final double SAME = 1e-9;
    /** Enough for both to be compiled for good; the fastest round of each counts. */
    private static final int ROUNDS = 400;

    private static final int RUNS = 50;

    private record Task(String name, List<PowerCourse> courses, Bus bus, Chopper chopper) {

        BusTrace exact() {
            double duration = courses.getFirst().duration();
            return new BusSimulation(bus, chopper)
                    .run(BusPower.repeating(courses, duration), new BusState(bus.floorEnergy(), false, 0));
        }

        SteppedBus stepped() {
            var stepped = new SteppedBus(courses, bus, chopper, 1e-11, 1e-13);
            stepped.run();
            return stepped;
        }
    }

    private BrakingRatio() {}

    /** Whether both agree and the first is so much faster in each of the tasks. */
    public static boolean holds() {
        Bus bus = Bus.of(3e-3, 746.7, 820);
        Chopper chopper = Chopper.of(BrakingFixtures.brakingUnit("b", 1, 40), bus);
        var unit = BrakingFixtures.unit(1.5, 20, 1e-3, 820);
        List<PowerCourse> cycle = List.of(
                PowerCourse.withLosses(BrakingFixtures.shuttle(0.01, 200, 0.2, 0.3, 1.3), unit),
                PowerCourse.withLosses(BrakingFixtures.shuttle(0.015, 150, 0.1, 0.4, 1.4), unit),
                PowerCourse.withLosses(BrakingFixtures.shuttle(0.02, 180, 0.25, 0.2, 1.3), unit));
        PowerCourse descent = BrakingFixtures.powers(new double[] {5}, new double[] {6000});
        double one = measure(new Task("cycle of three axes", cycle, bus, chopper));
        double two = measure(new Task("load running down", List.of(descent), bus, chopper));
        double least = Math.min(one, two);
        print("braking: event to event is at least %.0f times as fast in each; wanted %.0f%n", least, LEAST);
        return least >= LEAST;
    }

    /** How many times as fast. */
    private static double measure(Task task) {
        BusTrace exact = task.exact();
        SteppedBus stepped = task.stepped();
        double error = Math.abs(stepped.burned() - exact.burned()) / exact.burned();
        if (!(error < SAME)) {
            throw new IllegalStateException(task.name() + ": the two differ by " + error);
        }
        double fast = Double.POSITIVE_INFINITY;
        double slow = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            double kept = 0;
            for (int run = 0; run < RUNS; run++) {
                kept += task.exact().burned();
            }
            long middle = System.nanoTime();
            kept += task.stepped().burned();
            long end = System.nanoTime();
            if (!(kept > 0)) {
                throw new IllegalStateException(task.name() + ": nothing burned");
            }
            fast = Math.min(fast, (middle - start) / 1e3 / RUNS);
            slow = Math.min(slow, (end - middle) / 1e3);
        }
        print(
                "%s: %.2f µs event to event, %.0f µs adaptive, %.0f times; they agree to %.1e%n",
                task.name(), fast, slow, slow / fast, error);
        return slow / fast;
    }

    @SuppressWarnings({"SystemOut", "AnnotateFormatMethod"}) // a report for the terminal
    private static void print(String format, Object... values) {
        System.out.printf(format, values);
    }
}
