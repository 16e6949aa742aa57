package io.axiswright.engine.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Torque;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FindingCodeTest {

    @ParameterizedTest
    @EnumSource(FindingCode.class)
    void templateIsFilledAndSaysWhatToDo(FindingCode code) {
        Finding finding = code.at("lift", "/design/axes/0", "clause", new Torque(2.5), new Torque(2));
        assertThat(finding.text()).doesNotContain("{", "}").endsWith(".");
        assertThat(code.template()).contains("{subject}");
        assertThat(finding.remedy()).isNotBlank().endsWith(".");
        assertThat(finding.severity()).isEqualTo(code.severity());
    }

    @ParameterizedTest
    @EnumSource(FindingCode.class)
    void violationsStateValueAndLimitOrExplainThemselves(FindingCode code) {
        if (code.severity() == Severity.VIOLATION && code.template().contains("{limit}")) {
            assertThat(code.template()).contains("{value}");
        }
    }

    /** A code nobody can provoke is a promise nobody keeps. */
    @Test
    void everyCodeIsRaisedByATest() throws IOException {
        String tests;
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            tests = files.filter(file -> file.toString().endsWith("Test.java"))
                    .filter(file -> !file.endsWith("FindingCodeTest.java"))
                    .map(FindingCodeTest::text)
                    .collect(Collectors.joining());
        }
        assertThat(FindingCode.values())
                .allSatisfy(code -> assertThat(tests).containsPattern("\\b" + code.name() + "\\b"));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theTableHasNoRowWithoutACode() throws IOException {
        try (var in = Objects.requireNonNull(FindingCode.class.getResourceAsStream("/finding/findings.csv"))) {
            long rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("[A-Z]+-[A-Z0-9-]+,.*"))
                    .count();
            assertThat(rows).isEqualTo(FindingCode.values().length);
        }
    }

    @Test
    void codesAreUniqueAndNamedAfterTheirDiscipline() {
        assertThat(Arrays.stream(FindingCode.values()).map(FindingCode::code))
                .doesNotHaveDuplicates()
                .allMatch(
                        code -> code.matches(
                                "(DUTY|TOPOLOGY|CONTROL|BRAKING|STOPPING|SUPPLY|CONDUCTOR|CONTAINMENT|ENCLOSURE|ENERGY|HARMONIC|FAULT|MOUNTING|BILL|STUDY)(-[A-Z0-9]+)+"));
    }

    @Test
    void numbersAreWordedWithFourDigitsAndTheirUnit() {
        assertThat(Wording.of(new Torque(12.34567))).isEqualTo("12.35 N.m");
        assertThat(Wording.of(new io.axiswright.engine.quantity.Temperature(313.15)))
                .isEqualTo("40 Cel");
        assertThat(Wording.of(new Area(16e-6))).isEqualTo("16 mm2");
        assertThat(Wording.of(new Current(0.0239))).isEqualTo("23.9 mA");
        assertThat(Wording.of(new Torque(0.05))).isEqualTo("50 mN.m");
        assertThat(Wording.of(new AngularSpeed(100 * Math.PI))).isEqualTo("314.2 rad/s (3000 rev/min)");
        assertThat(Wording.of(null)).isEqualTo("nothing");
    }
}
