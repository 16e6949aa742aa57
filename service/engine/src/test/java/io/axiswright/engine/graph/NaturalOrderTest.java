package io.axiswright.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

    /** As a reader would list them: numbers by value, of one value as texts, a beginning before what goes on. */
    private static final List<String> LISTED = List.of(
            "", "02", "2", "10", "A", "a", "a-", "a-0", "a-01", "a-1", "a-1a", "a-2", "a-2b3", "a-2b10", "a-10",
            "a-100", "a1", "b");

    @Test
    void numbersCountByValue() {
        List<String> names = new ArrayList<>(LISTED);
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(names, new Random(seed));
            names.sort(NaturalOrder::compare);
            assertThat(names).isEqualTo(LISTED);
        }
    }

    @Test
    void onlyTheSameNameIsEqual() {
        for (String one : LISTED) {
            for (String other : LISTED) {
                assertThat(NaturalOrder.compare(one, other) == 0).isEqualTo(one.equals(other));
                assertThat(Integer.signum(NaturalOrder.compare(one, other)))
                        .isEqualTo(-Integer.signum(NaturalOrder.compare(other, one)));
            }
        }
    }

    @Test
    void numbersMayBeLongerThanAnyType() {
        assertThat(NaturalOrder.compare("n99999999999999999999999", "n100000000000000000000000"))
                .isNegative();
    }
}
