package io.axiswright.engine.harmonic;

import io.axiswright.engine.catalogue.RectifierInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Rectifiers on the same lines with like chokes, as one of their power and capacitance.
 *
 * @param rectifiers the rectifiers
 */
record LumpedRectifiers(List<Rectifier> rectifiers) {

    private record Kind(List<String> lines, double voltage, RectifierInput input) {}

    static List<LumpedRectifiers> of(List<Rectifier> rectifiers) {
        Map<Kind, List<Rectifier>> kinds = rectifiers.stream()
                .filter(r -> r.power().si() > 0)
                .collect(Collectors.groupingBy(
                        r -> new Kind(r.lines(), r.voltage().si(), r.input()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return kinds.values().stream().map(LumpedRectifiers::new).toList();
    }

    Rectifier first() {
        return rectifiers.getFirst();
    }

    double power() {
        return rectifiers.stream().mapToDouble(r -> r.power().si()).sum();
    }

    /**
     * The bridge that stands for them.
     *
     * @param source reactance of the mains in a line, ohm
     * @param drawn power that all rectifiers on the same lines draw, W; they are taken to draw like currents, so each feels the
     *     reactance of the mains as much larger as they all draw more than it
     * @param angular angular frequency of the mains, rad/s
     */
    Bridge bridge(double source, double drawn, double angular) {
        boolean threePhase = first().threePhase();
        double shared = source * drawn / power() * (threePhase ? 1 : 2);
        double base = 1
                / rectifiers.stream()
                        .mapToDouble(r -> (threePhase ? Math.sqrt(3) : 1)
                                * r.ratedCurrent().si()
                                / r.ratedVoltage().si())
                        .sum();
        return new Bridge(
                threePhase,
                first().voltage().si() * Math.sqrt(2),
                shared + first().input().line() * base,
                first().input().link() * base,
                angular
                        * rectifiers.stream()
                                .mapToDouble(r -> r.capacitance().si())
                                .sum(),
                power());
    }
}
