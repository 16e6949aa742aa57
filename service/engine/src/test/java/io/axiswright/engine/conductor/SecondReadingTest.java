package io.axiswright.engine.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.conductor.checker.Checker;
import io.axiswright.engine.conductor.checker.IecChecker;
import io.axiswright.engine.conductor.checker.Line;
import io.axiswright.engine.conductor.checker.NecChecker;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each answer holds every limit, the next smaller size breaks one, and the limit named as deciding is among those. */
class SecondReadingTest {

    private static final int SOME = 1_000;
    private static final int MANY = 10_000;

    private static Checker checker(CodeBasis basis) {
        return basis == CodeBasis.NFPA_79 ? new NecChecker() : new IecChecker();
    }

    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void someCircuits(CodeBasis basis) {
        Map<Limit, Integer> decided = check(basis, SOME);
        // A generator that never lets a limit decide proves nothing about it.
        Set<Limit> expected = basis == CodeBasis.NFPA_79
                ? Set.of(Limit.values())
                : Set.of(
                        Limit.CODE_MINIMUM,
                        Limit.AMPACITY,
                        Limit.TERMINATION,
                        Limit.DEVICE_COORDINATION,
                        Limit.VOLTAGE_DROP,
                        Limit.FAULT_WITHSTAND,
                        Limit.TERMINAL_RANGE);
        assertThat(decided.keySet()).isEqualTo(expected);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void manyCircuits(CodeBasis basis) {
        assertThat(check(basis, MANY)).isNotEmpty();
    }

    private static Map<Limit, Integer> check(CodeBasis basis, int count) {
        var decided = new EnumMap<Limit, Integer>(Limit.class);
        for (long seed = 0; seed < count; seed++) {
            Circuit circuit = Circuits.random(basis, seed).build();
            ConductorResult result = Sizing.run(basis, circuit);
            CircuitConductors answer = result.circuits().getFirst();
            if (answer.conductor() != null) {
                assertThat(result.sources()).hasSizeGreaterThan(4).doesNotHaveDuplicates();
            }
            checkOne(checker(basis), circuit, answer, result.findings());
            if (answer.conductor() != null) {
                decided.merge(answer.decidingLimit(), 1, Integer::sum);
            }
        }
        return decided;
    }

    private static void checkOne(Checker checker, Circuit circuit, CircuitConductors answer, List<Finding> findings) {
        String seed = "seed " + circuit.id() + " " + circuit;
        double device = checker.device(circuit);
        List<Line> lines = Double.isNaN(device) ? List.of() : checker.lines(circuit);
        List<Line> serving = lines.stream()
                .filter(line -> checker.broken(circuit, line, device).isEmpty())
                .toList();
        ConductorSize conductor = answer.conductor();
        if (conductor == null) {
            assertThat(serving).as(seed).isEmpty();
            assertThat(findings)
                    .as(seed)
                    .extracting(Finding::code)
                    .containsAnyOf(FindingCode.CONDUCTOR_NONE_FITS, FindingCode.CONDUCTOR_TABLE_EXCEEDED);
            return;
        }
        var line = new Line(answer.conductorsPerLine(), conductor.label());
        assertThat(serving).as(seed).isNotEmpty().first().isEqualTo(line);
        int place = lines.indexOf(line);
        if (place > 0) {
            assertThat(checker.broken(circuit, lines.get(place - 1), device))
                    .as(seed)
                    .contains(answer.decidingLimit());
        } else {
            assertThat(answer.decidingLimit()).as(seed).isEqualTo(Limit.CODE_MINIMUM);
        }
        assertThat(answer.tried())
                .as(seed)
                .extracting(t -> new Line(t.conductorsPerLine(), t.size().label()))
                .isEqualTo(lines.subList(0, place + 1));
        numbers(checker, circuit, answer, device, seed);
        terminals(circuit, conductor, findings, seed);
        double[] range = checker.deviceRange(circuit);
        says(findings, FindingCode.CONDUCTOR_DEVICE_TOO_SMALL, device < range[0] * (1 - 1e-9), seed);
        says(findings, FindingCode.CONDUCTOR_DEVICE_TOO_LARGE, device > range[1] * (1 + 1e-9), seed);
    }

    /** A conductor too thick for its terminals is told of; one too thin is not chosen, which the limits show. */
    private static void terminals(Circuit circuit, ConductorSize conductor, List<Finding> findings, String seed) {
        TerminalRange range = circuit.terminals();
        ConductorSize largest = range == null ? null : range.largest();
        says(
                findings,
                FindingCode.CONDUCTOR_TERMINAL_TOO_SMALL,
                largest != null && conductor.area().si() > largest.area().si(),
                seed);
    }

    private static void says(List<Finding> findings, FindingCode code, boolean expected, String seed) {
        assertThat(findings.stream().anyMatch(f -> f.code() == code))
                .as("%s %s", code, seed)
                .isEqualTo(expected);
    }

    private static void numbers(
            Checker checker, Circuit circuit, CircuitConductors answer, double device, String seed) {
        var line = new Line(answer.conductorsPerLine(), Sizing.conductor(answer));
        assertThat(Sizing.device(answer)).as(seed).isEqualTo(device);
        assertThat(Sizing.ampacity(answer))
                .as(seed)
                .isCloseTo(checker.ampacity(circuit, line), within(1e-9 * Sizing.ampacity(answer)));
        assertThat(Sizing.drop(answer))
                .as(seed)
                .isCloseTo(checker.drop(circuit, line), within(1e-4 * Sizing.drop(answer)));
        assertThat(Objects.requireNonNull(answer.voltageDropShare())
                        * circuit.voltage().si())
                .as(seed)
                .isCloseTo(Sizing.drop(answer), within(1e-9));
        Line needed = checker.lines(circuit).stream()
                .filter(l -> Set.of(Limit.VOLTAGE_DROP, Limit.FAULT_WITHSTAND, Limit.TERMINAL_RANGE)
                        .containsAll(checker.broken(circuit, l, device)))
                .findFirst()
                .orElseThrow();
        ConductorSize protective = answer.protectiveConductor();
        assertThat(protective == null ? Checker.NONE : protective.label())
                .as(seed)
                .isEqualTo(checker.protective(circuit, line, needed, device));
    }

    @Test
    void theSameRequestHasTheSameAnswer() {
        Circuit circuit = Circuits.random(CodeBasis.NFPA_79, 7).build();
        assertThat(Sizing.run(CodeBasis.NFPA_79, circuit)).isEqualTo(Sizing.run(CodeBasis.NFPA_79, circuit));
    }
}
