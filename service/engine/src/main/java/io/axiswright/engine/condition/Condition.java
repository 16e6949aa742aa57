package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.stream.Stream;

/**
 * What must be so of the machine, axis or circuit that asks. A comparison of something that is not known of it, such as an
 * attribute of an axis where a circuit asks, does not hold.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Condition permits AllOf, AnyOf, NoneOf, QuantityTest, WordTest, FlagTest {

    /** Whether it holds for what is known. */
    default boolean holds(Facts facts) {
        return switch (this) {
            case AllOf all -> all.conditions().stream().allMatch(c -> c.holds(facts));
            case AnyOf any -> any.conditions().stream().anyMatch(c -> c.holds(facts));
            case NoneOf none -> none.conditions().stream().noneMatch(c -> c.holds(facts));
            case QuantityTest test -> {
                var known = facts.quantities().get(test.attribute());
                yield known != null
                        && test.comparison().holds(known.si(), test.value().si());
            }
            case WordTest test -> {
                var known = facts.words().get(test.attribute());
                yield known != null && test.oneOf().contains(known);
            }
            case FlagTest test -> facts.flags().contains(test.attribute());
        };
    }

    /** The conditions it is made of; none if it is a test by itself. */
    default Stream<Condition> parts() {
        return switch (this) {
            case AllOf all -> all.conditions().stream();
            case AnyOf any -> any.conditions().stream();
            case NoneOf none -> none.conditions().stream();
            case QuantityTest _, WordTest _, FlagTest _ -> Stream.of();
        };
    }
}
