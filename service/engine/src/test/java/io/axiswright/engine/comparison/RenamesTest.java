package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Host;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.Wiring;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.study.TestCell;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected: what can be told of the parts by looking at them; no order of the parts and no direction may matter. */
class RenamesTest {

    private static Design with(List<Axis> axes) {
        return Copies.with(TestCell.design(4), "axes", axes);
    }

    private static Design with(Design design, Network network) {
        return Copies.with(design, "network", network);
    }

    private static Network network(Design design) {
        return Objects.requireNonNull(design.network());
    }

    private static Axis axis(String id, double kilograms, double commands) {
        Axis axis = Copies.with(TestCell.axis(0), "id", id);
        Belt lighter = Copies.with((Belt) axis.mechanism(), "load", new Mass(kilograms));
        return Copies.with(Copies.with(axis, "mechanism", lighter), "commandRate", new Frequency(commands));
    }

    private static List<Rename> renames(Design before, Design after) {
        return Recognition.between(before, after).renames();
    }

    private static Map<String, String> axes(List<Rename> renames) {
        Map<String, String> names = new HashMap<>();
        renames.stream()
                .filter(rename -> rename.what() == NamedPart.AXIS)
                .forEach(rename -> names.put(rename.before(), rename.after()));
        return names;
    }

    /** The first axis of the first design is like both of the second; the second is like one of them only, and wholly. */
    @Test
    void theMostAlikePairIsOneWhateverComesFirst() {
        Axis nearly = axis("nearly", 41, 250);
        Axis exactly = axis("exactly", 40, 250);
        Axis same = axis("same", 40, 250);
        for (List<Axis> order : List.of(List.of(nearly, exactly), List.of(exactly, nearly))) {
            assertThat(axes(renames(with(order), with(List.of(same))))).isEqualTo(Map.of("exactly", "same"));
            assertThat(axes(renames(with(List.of(same)), with(order)))).isEqualTo(Map.of("same", "exactly"));
        }
    }

    @Test
    void ofTwinsNoneIsClaimed() {
        List<Axis> twins = List.of(axis("left", 40, 250), axis("right", 40, 250));
        List<Axis> one = List.of(axis("middle", 40, 250));
        assertThat(renames(with(twins), with(one))).isEmpty();
        assertThat(renames(with(one), with(twins))).isEmpty();
    }

    /** The pair that is certain leaves one for the other. */
    @Test
    void whatIsLeftIsHeldAgainstWhatIsLeft() {
        List<Axis> before = List.of(axis("a", 40, 250), axis("b", 41, 250));
        List<Axis> after = List.of(axis("c", 40, 250), axis("d", 40, 300));
        // c is equal to a; d differs from a in one thing, from b in two; b differs from c in one thing
        assertThat(axes(renames(with(before), with(after)))).isEqualTo(Map.of("a", "c", "b", "d"));
        assertThat(axes(renames(with(after), with(before)))).isEqualTo(Map.of("c", "a", "d", "b"));
    }

    @Test
    void aPartOfWhichAllIsOtherIsAnotherPart() {
        Design design = TestCell.design(4);
        Network network = network(design);
        Host host = network.host();
        Host ported = Copies.with(host, "ports", List.of(new HostPort("other", new Frequency(7))));
        assertThat(renames(design, with(design, Copies.with(network, "host", ported))))
                .isEmpty();

        Place panel = network.places().getFirst();
        Place moved = new Place("other", TestCell.axis(9).position(), panel.maxGateways() + 1);
        assertThat(renames(design, with(design, Copies.with(network, "places", List.of(moved)))))
                .isEmpty();

        StopZone zone = design.stopZones().getFirst();
        StopZone slower = Copies.with(Copies.with(zone, "id", "other"), "decelerationTime", new Time(9));
        assertThat(renames(design, Copies.with(design, "stopZones", List.of(slower))))
                .isEmpty();
    }

    @Test
    void aSmallPartThatIsTheSameInAllElseIsTheSamePart() {
        Design design = TestCell.design(4);
        Network network = network(design);
        Host host = network.host();
        Host named = Copies.with(
                host,
                "ports",
                List.of(new HostPort("renamed", host.ports().getFirst().commandRate())));
        assertThat(renames(design, with(design, Copies.with(network, "host", named))))
                .containsExactly(new Rename(NamedPart.HOST_PORT, "port-0", "renamed"));
    }

    /** All that names a place follows its new id: the first design under the ids of the second is the second. */
    @Test
    void whateverRefersToAPlaceFollowsIt() {
        Design before = placed("panel-0");
        Design after = placed("cabinet");
        List<Rename> renames = renames(before, after);
        assertThat(renames).containsExactly(new Rename(NamedPart.PLACE, "panel-0", "cabinet"));
        assertThat(Renames.applied(renames, before)).isEqualTo(after);
    }

    private static Design placed(String id) {
        Design design = TestCell.design(4);
        Network network = network(design);
        Place panel = Copies.with(network.places().getFirst(), "id", id);
        design = with(design, Copies.with(network, "places", List.of(panel)));
        design = Copies.with(design, "controlPower", new ControlPower(id, 0.2, true, null, null, null, List.of(id)));
        return Copies.with(design, "wiring", new Wiring(List.of(id), id, null));
    }

    /** A design may not have the id twice, so the axis to come would stand in the way of the name. */
    @Test
    void anIdOfAnAxisToComeIsNotGivenToAnother() {
        Design before = with(List.of(axis("first", 40, 250)));
        var reserved = new ReservedAxis(
                "second", null, TestCell.axis(3).position(), null, null, null, null, null, new Frequency(250), null);
        Design waiting = with(before, Copies.with(network(before), "reserved", List.of(reserved)));
        Design after = with(List.of(axis("second", 40, 250)));
        assertThat(renames(waiting, after)).isEmpty();
        assertThat(renames(after, waiting)).isEmpty();
        assertThat(axes(renames(before, after))).isEqualTo(Map.of("first", "second"));
    }

    /** Machines of few values, so that twins, ties and near misses abound. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void backwardsIsTheInverse(int seed) {
        var random = new Random(seed);
        int recognised = 0;
        for (int round = 0; round < 300; round++) {
            Design before = machine("old", random);
            Design after = machine("new", random);
            List<Rename> forth = renames(before, after);
            List<Rename> back = renames(after, before);
            assertThat(back.stream()
                            .map(rename -> new Rename(rename.what(), rename.after(), rename.before()))
                            .toList())
                    .containsExactlyInAnyOrderElementsOf(forth);
            holdInverse(before, after, forth, back);
            recognised += axes(forth).size();
        }
        // else ties alone would have been held
        assertThat(recognised).isGreaterThan(200);
    }

    /** Differences are told in the ids of the second design, so backwards they are led to those by the renames. */
    private static void holdInverse(Design before, Design after, List<Rename> forth, List<Rename> back) {
        List<Difference> there = Differences.between(Renames.applied(forth, before), after, Set.of());
        assertThat(Renames.applied(forth, Renames.applied(back, after))).isEqualTo(after);
        List<Difference> inverse = Differences.between(after, Renames.applied(forth, before), Set.of());
        assertThat(inverse.stream().map(RenamesTest::inverted).toList())
                .containsExactlyInAnyOrderElementsOf(
                        there.stream().map(RenamesTest::told).toList());
    }

    private static List<Object> told(Difference difference) {
        return Arrays.asList(difference.place(), difference.before(), difference.after());
    }

    private static List<Object> inverted(Difference difference) {
        return Arrays.asList(difference.place(), difference.after(), difference.before());
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5})
    void theOrderOfThePartsDoesNotMatter(int seed) {
        var random = new Random(seed);
        for (int round = 0; round < 100; round++) {
            Design before = machine("old", random);
            Design after = machine("new", random);
            List<Axis> shuffled = new ArrayList<>(after.axes());
            Collections.shuffle(shuffled, random);
            assertThat(renames(before, Copies.with(after, "axes", shuffled)))
                    .containsExactlyInAnyOrderElementsOf(renames(before, after));
        }
    }

    private static Design machine(String name, Random random) {
        List<Axis> axes = new ArrayList<>(IntStream.range(0, 1 + random.nextInt(7))
                .mapToObj(k -> axis(name + k, 40 + random.nextInt(4), 250 + random.nextInt(4)))
                .toList());
        axes.add(axis("stays", 40, 250));
        Design design = with(axes);
        if (random.nextBoolean()) {
            String id = name + "-zone";
            design = Copies.with(
                    design, "stopZones", List.of(Copies.with(design.stopZones().getFirst(), "id", id)));
            design = Copies.with(
                    design,
                    "axes",
                    axes.stream().map(axis -> Copies.with(axis, "stopZone", id)).toList());
        }
        return design;
    }
}
