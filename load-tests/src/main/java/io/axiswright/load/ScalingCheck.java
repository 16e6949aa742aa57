package io.axiswright.load;

import java.util.NavigableMap;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Whether the time of a study grows no faster than n log n from the smallest machine to the largest. */
final class ScalingCheck {

    private ScalingCheck() {}

    static boolean holds() throws RunnerException {
        return report(measure());
    }

    /** Milliseconds per study by number of axes: of the best iteration, since other work on the machine only adds. */
    private static NavigableMap<Integer, Double> measure() throws RunnerException {
        var options = new OptionsBuilder()
                .include(ScalingBenchmark.class.getName())
                .shouldFailOnError(true)
                .build();
        var times = new TreeMap<Integer, Double>();
        for (RunResult result : new Runner(options).run()) {
            int axes = Integer.parseInt(result.getParams().getParam("axes"));
            times.put(axes, result.getPrimaryResult().getStatistics().getMin());
        }
        return times;
    }

    @SuppressWarnings("SystemOut") // a report for the terminal
    private static boolean report(NavigableMap<Integer, Double> times) {
        times.forEach((axes, time) ->
                System.out.printf("%4d axes: %8.3f ms per study, %6.1f µs per axis%n", axes, time, 1000 * time / axes));
        var first = times.firstEntry();
        var last = times.lastEntry();
        double grown = last.getValue() / first.getValue();
        double limit = nLogN(last.getKey()) / nLogN(first.getKey());
        System.out.printf(
                "%d to %d axes: time grows %.1f times; n log n allows %.1f times%n",
                first.getKey(), last.getKey(), grown, limit);
        return grown <= limit;
    }

    private static double nLogN(int n) {
        return n * Math.log(n);
    }
}
