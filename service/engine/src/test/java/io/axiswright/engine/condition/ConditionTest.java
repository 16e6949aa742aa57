package io.axiswright.engine.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.supply.LoadUse;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conditions by hand. */
class ConditionTest {

    private static final Facts LIFT = new Facts(
            Map.of(QuantityAttribute.SPUR_LENGTH, new Length(5), QuantityAttribute.AXES, new Ratio(3)),
            Map.of(WordAttribute.DRIVE_UNIT, "drive-80"),
            Set.of(FlagAttribute.HOLDING_BRAKE));
    private static final Condition TRUE = new FlagTest(FlagAttribute.HOLDING_BRAKE);
    private static final Condition FALSE = new FlagTest(FlagAttribute.KEEP_ALIVE);

    private static Condition spur(Relation comparison, double metres) {
        return new QuantityTest(QuantityAttribute.SPUR_LENGTH, comparison, new Length(metres));
    }

    @ParameterizedTest
    @CsvSource({
        "BELOW, 4.9, false", "BELOW, 5, false", "BELOW, 5.1, true",
        "AT_MOST, 4.9, false", "AT_MOST, 5, true", "AT_MOST, 5.1, true",
        "EQUAL, 4.9, false", "EQUAL, 5, true", "EQUAL, 5.1, false",
        "AT_LEAST, 4.9, true", "AT_LEAST, 5, true", "AT_LEAST, 5.1, false",
        "ABOVE, 4.9, true", "ABOVE, 5, false", "ABOVE, 5.1, false"
    })
    void comparesNumbers(Relation comparison, double limit, boolean holds) {
        assertThat(spur(comparison, limit).holds(LIFT)).isEqualTo(holds);
    }

    /** 16 ft 4.850394 in are 5 m but for rounding: 16.404199475 · 0.3048 = 4.99999999998. */
    @Test
    void whatDiffersByRoundingIsTheSame() {
        double converted = 16.404199475 * 0.3048;

        assertThat(converted).isNotEqualTo(5.0);
        assertThat(spur(Relation.EQUAL, converted).holds(LIFT)).isTrue();
        assertThat(spur(Relation.ABOVE, converted).holds(LIFT)).isFalse();
    }

    @Test
    void joinsOthers() {
        assertThat(new AllOf(List.of(TRUE, TRUE)).holds(LIFT)).isTrue();
        assertThat(new AllOf(List.of(TRUE, FALSE)).holds(LIFT)).isFalse();
        assertThat(new AnyOf(List.of(FALSE, TRUE)).holds(LIFT)).isTrue();
        assertThat(new AnyOf(List.of(FALSE, FALSE)).holds(LIFT)).isFalse();
        assertThat(new NoneOf(List.of(FALSE, FALSE)).holds(LIFT)).isTrue();
        assertThat(new NoneOf(List.of(FALSE, TRUE)).holds(LIFT)).isFalse();
        assertThat(new AllOf(List.of(new NoneOf(List.of(FALSE)), new AnyOf(List.of(TRUE)))).holds(LIFT))
                .isTrue();
    }

    @Test
    void findsWords() {
        assertThat(new WordTest(WordAttribute.DRIVE_UNIT, List.of("drive-60", "drive-80")).holds(LIFT))
                .isTrue();
        assertThat(new WordTest(WordAttribute.DRIVE_UNIT, List.of("drive-60")).holds(LIFT))
                .isFalse();
    }

    @Test
    void whatIsNotKnownHoldsNoComparison() {
        var current = new QuantityTest(QuantityAttribute.CIRCUIT_CURRENT, Relation.AT_LEAST, new Current(0));

        assertThat(current.holds(LIFT)).isFalse();
        assertThat(new NoneOf(List.of(current)).holds(LIFT)).isTrue();
        assertThat(new WordTest(WordAttribute.GEAR_UNIT, List.of("gear")).holds(LIFT))
                .isFalse();
        assertThat(TRUE.holds(Facts.NONE)).isFalse();
    }

    @Test
    void factsOfAnAxisAreThoseOfTheMachineToo() {
        Facts machine = new Facts(
                Map.of(QuantityAttribute.AXES, new Ratio(7)),
                Map.of(WordAttribute.CODE_BASIS, "NFPA_79"),
                Set.of(FlagAttribute.BRAKING_UNIT));

        Facts both = machine.and(LIFT);

        assertThat(both.quantities())
                .containsEntry(QuantityAttribute.AXES, new Ratio(3))
                .containsEntry(QuantityAttribute.SPUR_LENGTH, new Length(5));
        assertThat(both.words()).hasSize(2);
        assertThat(both.flags()).containsExactlyInAnyOrder(FlagAttribute.BRAKING_UNIT, FlagAttribute.HOLDING_BRAKE);
    }

    @Test
    void findsWhatMakesNoSense() {
        var check = new ConditionCheck(Set.of(Reach.CIRCUIT), "drive-80"::equals, place -> "/c" + place);

        var faults = check.faults(
                new AllOf(List.of(
                        new QuantityTest(QuantityAttribute.CIRCUIT_LENGTH, Relation.ABOVE, new Current(1)),
                        new NoneOf(List.of(new FlagTest(FlagAttribute.HOLDING_BRAKE))),
                        new WordTest(WordAttribute.CODE_BASIS, List.of("NFPA_79", "NFPA_70")),
                        new WordTest(WordAttribute.CIRCUIT_DEVICE, List.of("drive-80", "breaker")),
                        new QuantityTest(QuantityAttribute.AXES, Relation.ABOVE, new Ratio(1)))),
                "/when");

        assertThat(faults)
                .extracting(Fault::pointer, Fault::code)
                .containsExactly(
                        tuple("/c/when/conditions/0/value/unit", FaultCode.WRONG_UNIT),
                        tuple("/c/when/conditions/1/conditions/0/attribute", FaultCode.INCONSISTENT),
                        tuple("/c/when/conditions/2/oneOf/1", FaultCode.UNKNOWN_VALUE),
                        tuple("/c/when/conditions/3/oneOf/1", FaultCode.DANGLING_REFERENCE));
        assertThat(faults.getFirst().accepted()).contains("m").contains("in");
    }

    /** The words are repeated where they are asked for, because what has them comes later. */
    @Test
    void closedListsAreThoseOfWhatIsNamed() {
        assertThat(WordAttribute.CODE_BASIS.words()).isEqualTo(names(CodeBasis.values()));
        assertThat(WordAttribute.SUPPLY_SYSTEM.words()).isEqualTo(names(SupplySystem.values()));
        assertThat(WordAttribute.CIRCUIT_USE.words()).isEqualTo(names(LoadUse.values()));
        assertThat(WordAttribute.CIRCUIT_CONNECTION.words()).isEqualTo(names(Connection.values()));
    }

    private static List<String> names(Enum<?>[] constants) {
        return Stream.of(constants).map(Enum::name).toList();
    }
}
