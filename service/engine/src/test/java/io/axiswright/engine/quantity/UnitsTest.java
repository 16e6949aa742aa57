package io.axiswright.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.UCUM;
import systems.uom.ucum.format.UCUMFormat;
import tech.units.indriya.quantity.Quantities;

/** The table of units held against a kept implementation of UCUM. */
class UnitsTest {

    /** UCUM writes US customary units in brackets and knows no thousand feet; the rest of our symbols are its own. Horsepower is
     * spelled out: the library leaves the 550 out of its [HP].
     */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("in", "[in_i]"),
            Map.entry("in2", "[in_i]2"),
            Map.entry("ft", "[ft_i]"),
            Map.entry("ft2", "[ft_i]2"),
            Map.entry("ft3", "[ft_i]3"),
            Map.entry("lb", "[lb_av]"),
            Map.entry("oz", "[oz_av]"),
            Map.entry("lbf", "[lbf_av]"),
            Map.entry("ozf", "[oz_av].[g]"),
            Map.entry("rev", "circ"),
            Map.entry("krpm", "(1000.circ/min)"),
            Map.entry("psi", "[psi]"),
            Map.entry("cmil", "[cml_i]"),
            Map.entry("hp", "(550.[ft_i].[lbf_av]/s)"),
            Map.entry("Btu", "[Btu_IT]"),
            Map.entry("kft", "(1000.[ft_i])"));

    /** Square roots have no place in UCUM; temperatures are checked apart. */
    static Stream<Unit> comparable() {
        return Arrays.stream(Dimension.values())
                .filter(d -> d != Dimension.TEMPERATURE && d != Dimension.TEMPERATURE_RISE)
                .flatMap(d -> Units.of(d).stream())
                .filter(u -> !u.symbol().contains("^0.5"));
    }

    private static javax.measure.Unit<?> ucum(Unit unit) {
        var text = new StringBuilder();
        for (String piece : unit.symbol().split("(?<=[./])|(?=[./])", -1)) {
            text.append(WORDS.getOrDefault(piece, piece));
        }
        return UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE).parse(text.toString());
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static double factor(Unit unit) {
        var base = Units.answerUnit(unit.dimension());
        return ((javax.measure.Unit) ucum(unit))
                .getConverterTo((javax.measure.Unit) ucum(base))
                .convert(1.0);
    }

    @ParameterizedTest
    @MethodSource("comparable")
    void factorAgreesWithUcum(Unit unit) {
        assertThat(unit.factor() / factor(unit)).as(unit.symbol()).isCloseTo(1, within(1e-9));
    }

    /** Square roots by hand: one of them is a coherent SI unit, the other has a torque on top. */
    @Test
    void motorConstants() {
        assertThat(factorOf(Dimension.MOTOR_CONSTANT, "N.m/W^0.5")).isEqualTo(1);
        assertThat(factorOf(Dimension.MOTOR_CONSTANT, "ozf.in/W^0.5")).isEqualTo(factorOf(Dimension.TORQUE, "ozf.in"));
    }

    private static double factorOf(Dimension dimension, String symbol) {
        return Units.find(dimension, symbol).orElseThrow().factor();
    }

    @ParameterizedTest
    @CsvSource({"-459.67", "-40", "32", "98.6", "212"})
    void fahrenheitAgreesWithUcum(double reading) {
        double kelvin = Quantities.getQuantity(reading, UCUM.FAHRENHEIT.asType(Temperature.class))
                .to(UCUM.KELVIN)
                .getValue()
                .doubleValue();
        Unit fahrenheit = Units.find(Dimension.TEMPERATURE, "degF").orElseThrow();
        assertThat(fahrenheit.toSi(reading)).isCloseTo(kelvin, within(1e-9));
        assertThat(fahrenheit.fromSi(kelvin)).isCloseTo(reading, within(1e-9));
    }

    /** SI Brochure: t/°C = T/K − 273.15; a difference has no zero. */
    @Test
    void celsiusAndDifferences() {
        Unit celsius = Units.find(Dimension.TEMPERATURE, "Cel").orElseThrow();
        assertThat(celsius.toSi(25)).isCloseTo(298.15, within(1e-12));
        assertThat(celsius.fromSi(0)).isEqualTo(-273.15);
        assertThat(Units.find(Dimension.TEMPERATURE_RISE, "degF").orElseThrow().toSi(9))
                .isCloseTo(5, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasAnAnswerUnitAndUniqueSymbols(Dimension dimension) {
        List<Unit> units = Units.of(dimension);
        assertThat(units).isNotEmpty();
        assertThat(units.stream().map(Unit::symbol)).doesNotHaveDuplicates();
        assertThat(dimension.of(2.5).si()).isEqualTo(2.5);
        assertThat(dimension.of(2.5)).isInstanceOf(dimension.type());
        assertThat(dimension.of(2.5).dimension()).isEqualTo(dimension);
        if (dimension != Dimension.TEMPERATURE) {
            assertThat(units.getFirst().factor()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void readingsSurviveTheWayThroughSi(Dimension dimension) {
        for (Unit unit : Units.of(dimension)) {
            assertThat(unit.fromSi(unit.toSi(12.34))).as(unit.symbol()).isCloseTo(12.34, within(1e-10));
        }
    }
}
