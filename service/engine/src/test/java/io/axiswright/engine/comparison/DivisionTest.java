package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.study.TestCell;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected: what an engineer sees who lays the two lists of parts side by side. */
class DivisionTest {

    private static Design with(Axis... axes) {
        return Copies.with(TestCell.design(4), "axes", List.of(axes));
    }

    /** A belt axis at the place of the test cell's of that number. */
    private static Axis axis(String id, double kilograms, int place) {
        Axis axis = Copies.with(TestCell.axis(place), "id", id);
        Belt belt = Copies.with((Belt) axis.mechanism(), "load", new Mass(kilograms));
        return Copies.with(Copies.with(axis, "mechanism", belt), "description", "carries " + id);
    }

    @Test
    void twoAxesThatShareTheLoadOfOneStandForIt() {
        Design before = with(axis("gantry", 80, 1), axis("other", 12, 0));
        Design after = with(axis("other", 12, 0), axis("left", 50, 2), axis("right", 30, 3));
        Recognition recognition = Recognition.between(before, after);
        assertThat(recognition.renames()).isEmpty();
        assertThat(recognition.merges()).isEmpty();
        assertThat(recognition.splits())
                .containsExactly(new Division(
                        NamedPart.AXIS,
                        "gantry",
                        List.of("left", "right"),
                        List.of("load 80 kg = 50 kg + 30 kg"),
                        "Axis gantry was split into axis left and axis right: load 80 kg = 50 kg + 30 kg."));
        assertThat(Recognition.between(after, before).merges())
                .containsExactly(new Division(
                        NamedPart.AXIS,
                        "gantry",
                        List.of("left", "right"),
                        List.of("load 80 kg = 50 kg + 30 kg"),
                        "Axis left and axis right were merged into axis gantry: load 80 kg = 50 kg + 30 kg."));
    }

    /** 50 kg and 35 kg are not 80 kg to within a hundredth; 50 kg and 30.5 kg are. */
    @Test
    void theLoadsMustAddUp() {
        Design before = with(axis("gantry", 80, 1));
        assertThat(Recognition.between(before, with(axis("left", 50, 2), axis("right", 35, 3)))
                        .splits())
                .isEmpty();
        assertThat(Recognition.between(before, with(axis("left", 50, 2), axis("right", 30.5, 3)))
                        .splits())
                .hasSize(1);
    }

    /** The loads add up by chance: what the axes do all day is another thing. */
    @Test
    void anAxisThatWorksOtherwiseIsNoHalf() {
        Cycle standing = new Cycle(List.of(new Dwell(new Time(1), null, null, false)));
        Axis right = Copies.with(axis("right", 30, 3), "cycle", standing);
        assertThat(Recognition.between(with(axis("gantry", 80, 1)), with(axis("left", 50, 2), right))
                        .splits())
                .isEmpty();
    }

    @Test
    void whereTwoPairsWouldDoNoneIsClaimed() {
        Design before = with(axis("gantry", 80, 1));
        Design after = with(axis("a", 50, 2), axis("b", 30, 3), axis("c", 20, 2), axis("d", 60, 3));
        assertThat(Recognition.between(before, after).splits()).isEmpty();
        Design two = with(axis("gantry", 80, 1), axis("twin", 80, 0));
        assertThat(Recognition.between(two, with(axis("a", 50, 2), axis("b", 30, 3)))
                        .splits())
                .isEmpty();
    }

    /** It is there still, under another id and with all it carried; the two are new. */
    @Test
    void anAxisThatIsThereStillWasNotSplit() {
        Axis gantry = axis("gantry", 80, 1);
        Design after = with(axis("a", 50, 2), axis("b", 30, 3), Copies.with(gantry, "id", "portal"));
        Recognition recognition = Recognition.between(with(gantry), after);
        assertThat(recognition.splits()).isEmpty();
        assertThat(recognition.renames()).containsExactly(new Rename(NamedPart.AXIS, "gantry", "portal"));
    }

    private static Design zoned(List<String> zones, String... ofAxes) {
        Design design = TestCell.design(ofAxes.length);
        StopZone zone = design.stopZones().getFirst();
        design = Copies.with(
                design,
                "stopZones",
                zones.stream().map(id -> Copies.with(zone, "id", id)).toList());
        List<Axis> axes = design.axes();
        return Copies.with(
                design,
                "axes",
                IntStream.range(0, ofAxes.length)
                        .mapToObj(k -> Copies.with(axes.get(k), "stopZone", ofAxes[k]))
                        .toList());
    }

    @Test
    void twoZonesThatShareTheAxesOfOneStandForIt() {
        Design before = zoned(List.of("cell", "infeed"), "cell", "cell", "cell", "infeed");
        Design after = zoned(List.of("left", "right", "infeed"), "left", "right", "left", "infeed");
        assertThat(Recognition.between(before, after).splits()).singleElement().satisfies(split -> {
            assertThat(split.whole()).isEqualTo("cell");
            assertThat(split.parts()).containsExactly("left", "right");
            assertThat(split.text())
                    .isEqualTo("Stop zone cell was split into stop zone left and stop zone right: "
                            + "left stands for cell as stop zone of axis axis-0, stop zone of axis axis-2; "
                            + "right stands for cell as stop zone of axis axis-1.");
        });
        assertThat(Recognition.between(after, before).merges()).hasSize(1);
    }

    @Test
    void aZoneThatTakesInTheAxesOfAnotherIsNoHalf() {
        Design before = zoned(List.of("cell", "infeed"), "cell", "cell", "infeed");
        Design mixed = zoned(List.of("left", "right", "infeed"), "left", "right", "left");
        Design kept = zoned(List.of("left", "infeed"), "left", "infeed", "infeed");
        assertThat(Recognition.between(before, mixed).splits()).isEmpty();
        assertThat(Recognition.between(before, kept).splits()).isEmpty();
    }

    /** Loads of few values, so that sums, twins and clashes abound. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void backwardsASplitIsAMerge(int seed) {
        var random = new Random(seed);
        int splits = 0;
        for (int round = 0; round < 400; round++) {
            Design before = machine("old", random);
            Design after = machine("new", random);
            Recognition forth = Recognition.between(before, after);
            Recognition back = Recognition.between(after, before);
            assertThat(told(back.merges())).isEqualTo(told(forth.splits()));
            assertThat(told(back.splits())).isEqualTo(told(forth.merges()));
            assertThat(back.renames().stream()
                            .map(rename -> new Rename(rename.what(), rename.after(), rename.before()))
                            .toList())
                    .containsExactlyInAnyOrderElementsOf(forth.renames());
            holdApart(forth);
            splits += forth.splits().size();

            List<Axis> shuffled = new ArrayList<>(after.axes());
            Collections.shuffle(shuffled, random);
            assertThat(Recognition.between(before, Copies.with(after, "axes", shuffled))
                            .splits())
                    .extracting(Division::whole)
                    .isEqualTo(forth.splits().stream().map(Division::whole).toList());
        }
        // else ambiguity alone would have been held
        assertThat(splits).isGreaterThan(15);
    }

    private static List<List<Object>> told(List<Division> divisions) {
        return divisions.stream()
                .map(division ->
                        List.<Object>of(division.what(), division.whole(), division.parts(), division.identifiedBy()))
                .toList();
    }

    /** No part has two fates. */
    private static void holdApart(Recognition recognition) {
        List<String> ids = new ArrayList<>();
        for (List<Division> divisions : List.of(recognition.splits(), recognition.merges())) {
            divisions.forEach(division -> {
                ids.add(division.whole());
                ids.addAll(division.parts());
            });
        }
        recognition.renames().forEach(rename -> ids.addAll(List.of(rename.before(), rename.after())));
        assertThat(ids).doesNotHaveDuplicates();
    }

    private static Design machine(String name, Random random) {
        return with(IntStream.rangeClosed(0, random.nextInt(4))
                .mapToObj(k -> {
                    Axis axis = axis(name + k, 10 * (1 + random.nextInt(6)), random.nextInt(4));
                    return Copies.with(axis, "commandRate", new Frequency(250 + random.nextInt(2)));
                })
                .toArray(Axis[]::new));
    }
}
