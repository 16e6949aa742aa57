package io.axiswright.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.quantity.AnyOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ArrangementTest {

    private record Shelf(
            @AnyOrder List<Box> boxes,
            List<Box> stack,
            @Nullable Lid lid) {}

    private record Box(String id, @AnyOrder @Nullable List<String> things) {}

    private sealed interface Lid {}

    private record Plain(int weight) implements Lid {}

    private record Labelled(@AnyOrder List<Double> sizes) implements Lid {}

    private static Box box(String id, String... things) {
        return new Box(id, List.of(things));
    }

    @Test
    void listsInAnyOrderStandInThatOfTheirContentAndOthersAsTheyStood() {
        var shelf = new Shelf(
                List.of(box("b-10", "z", "y"), box("b-2"), box("a")),
                List.of(box("q"), box("p", "n", "m")),
                new Labelled(List.of(2.0, 1.0)));
        assertThat(Arrangement.of(shelf).value())
                .isEqualTo(new Shelf(
                        List.of(box("a"), box("b-2"), box("b-10", "y", "z")),
                        List.of(box("q"), box("p", "m", "n")),
                        new Labelled(List.of(1.0, 2.0))));
    }

    @Test
    void pointersLeadBackThroughListsWithinLists() {
        var shelf = new Shelf(
                List.of(box("b", "z", "y"), box("a", "x")),
                List.of(box("q", "w", "v")),
                new Labelled(List.of(2.0, 1.0)));
        Arrangement<Shelf> arranged = Arrangement.of(shelf);
        // a stands first now and stood second, y stands first in b and stood second
        assertThat(arranged.before("/boxes/0/things/0")).isEqualTo("/boxes/1/things/0");
        assertThat(arranged.before("/boxes/1/things/0")).isEqualTo("/boxes/0/things/1");
        assertThat(arranged.before("/boxes/1/id")).isEqualTo("/boxes/0/id");
        assertThat(arranged.before("/stack/0/things/1")).isEqualTo("/stack/0/things/0");
        assertThat(arranged.before("/lid/sizes/0")).isEqualTo("/lid/sizes/1");
        assertThat(arranged.before("/boxes")).isEqualTo("/boxes");
        assertThat(arranged.before("/lid/missing/0")).isEqualTo("/lid/missing/0");
        assertThat(arranged.before("")).isEmpty();
    }

    @Test
    void whatStandsInOrderStaysTheVerySameObject() {
        var shelf =
                new Shelf(List.of(new Box("a", null), box("b", "x", "x")), List.of(box("q"), box("p")), new Plain(1));
        Arrangement<Shelf> arranged = Arrangement.of(shelf);
        assertThat(arranged.value()).isSameAs(shelf);
        assertThat(arranged.isAsBefore()).isTrue();
        assertThat(arranged.before("/boxes/1/things/0")).isEqualTo("/boxes/1/things/0");
    }
}
