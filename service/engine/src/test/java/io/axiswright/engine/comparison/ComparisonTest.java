package io.axiswright.engine.comparison;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import io.axiswright.engine.topology.SearchGate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

@org.jspecify.annotations.NullUnmarked
class ComparisonTest {

    private static final Comparison COMPARISON = new Comparison(new SearchGate(1));
    private static final StudyRequest BASE = TestCell.request(4);

    private static ComparisonResult compare(StudyRequest before, StudyRequest after) {
        return COMPARISON.compare(new ComparisonRequest(before, after, 100));
    }

    /** The request with one value replaced, found by its pointer with ids. */
    private static StudyRequest change(StudyRequest request, Object value, String... path) {
        List<Step> steps = new ArrayList<>();
        for (String step : path) {
            steps.add(step.startsWith("#") ? new Step.Element(step.substring(1), 99) : new Step.Member(step));
        }
        return Patch.putIn(request, new Difference(steps, ChangeKind.CHANGED, null, value));
    }

    private static StudyRequest heavier(StudyRequest request, String axis, double kilograms) {
        return change(request, new Mass(kilograms), "design", "axes", "#" + axis, "mechanism", "load");
    }

    @Test
    void aDesignComparedWithItselfShowsNothing() {
        ComparisonResult result = compare(BASE, BASE);
        assertThat(result.changes()).isEmpty();
        assertThat(result.consequences()).isEmpty();
        assertThat(result.studies()).isZero();
    }

    @Test
    void aHeavierLoadIsTheCauseOfALargerDriveUnit() {
        ComparisonResult result = compare(BASE, heavier(BASE, "axis-2", 170));
        assertThat(result.changes()).singleElement().satisfies(change -> {
            assertThat(change.path()).isEqualTo("/design/axes/axis-2/mechanism/load");
            assertThat(change.before()).isEqualTo(new Mass(40));
            assertThat(change.after()).isEqualTo(new Mass(170));
        });
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo("/duty/axes/axis-2/driveUnit");
            assertThat(c.text())
                    .startsWith("Drive unit of axis axis-2 went from ")
                    .endsWith(", because load of axis axis-2 changed from 40 kg to 170 kg (this alone does it).");
            assertThat(c.before()).isEqualTo("unit-small");
            assertThat(c.after()).isEqualTo("unit-large");
            assertThat(c.causes()).containsExactly(new Cause("change-1", Role.NECESSARY_AND_SUFFICIENT));
            assertThat(c.text()).contains("load", "170 kg");
        });
        assertThat(result.consequences()).noneMatch(c -> c.path().startsWith("/duty/axes/axis-1/"));
    }

    @Test
    void eachOfTwoChangesIsBlamedForItsOwnConsequence() {
        StudyRequest after = heavier(BASE, "axis-2", 170);
        after = change(after, new Temperature(273.15 + 20), "design", "installation", "ambient");
        ComparisonResult result = compare(BASE, after);
        assertThat(result.changes())
                .extracting(InputChange::path)
                .containsExactly("/design/axes/axis-2/mechanism/load", "/design/installation/ambient");
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo("/duty/axes/axis-2/driveUnit");
            assertThat(c.causes()).containsExactly(new Cause("change-1", Role.NECESSARY_AND_SUFFICIENT));
        });
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).startsWith("/conductors/circuits/").endsWith("/correctedAmpacity");
            assertThat(c.causes()).contains(new Cause("change-2", Role.NECESSARY_AND_SUFFICIENT));
        });
    }

    @Test
    void twoChangesThatTogetherMoveATotalEachContribute() {
        StudyRequest after = heavier(heavier(BASE, "axis-1", 170), "axis-2", 170);
        ComparisonResult result = compare(BASE, after);
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo("/billOfMaterials/required/total");
            assertThat(c.causes())
                    .containsExactly(
                            new Cause("change-1", Role.CONTRIBUTING), new Cause("change-2", Role.CONTRIBUTING));
            assertThat(c.onlyTogether()).isTrue();
            assertThat(c.together()).containsExactly("change-1", "change-2");
        });
    }

    /** The independent route: a study of our own with the two changes and without the third. */
    @Test
    void whatTwoOfThreeChangesBringTogetherIsSaid() {
        StudyRequest two = heavier(heavier(BASE, "axis-1", 170), "axis-2", 170);
        StudyRequest three = change(two, "renamed machine", "design", "name");
        String total = "/billOfMaterials/required/total";
        SystemStudy study = SystemStudy.proving();
        assertThat(value(study.system(two), total)).isEqualTo(value(study.system(three), total));
        ComparisonResult result = compare(BASE, three);
        assertThat(result.changes()).hasSize(3);
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo(total);
            assertThat(c.together())
                    .containsExactlyElementsOf(result.changes().stream()
                            .filter(change -> change.path().endsWith("/load"))
                            .map(InputChange::id)
                            .toList());
            assertThat(c.text()).endsWith("(only together).");
        });
    }

    @Test
    void anAddedAxisIsOneChange() {
        List<Axis> axes = new ArrayList<>(BASE.design().axes());
        axes.add(2, TestCell.axis(7));
        ComparisonResult result = compare(BASE, change(BASE, List.copyOf(axes), "design", "axes"));
        assertThat(result.changes()).singleElement().satisfies(change -> {
            assertThat(change.kind()).isEqualTo(ChangeKind.ADDED);
            assertThat(change.path()).isEqualTo("/design/axes/axis-7");
        });
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.kind()).isEqualTo(ChangeKind.ADDED);
            assertThat(c.path()).isEqualTo("/duty/axes/axis-7");
        });
    }

    /** The dearer unit is among the candidates of every axis, the new one's too, and is bought for none. */
    @Test
    void whatIsNoConsequenceIsNoneWithinAPartThatCameEither() {
        List<Axis> axes = new ArrayList<>(BASE.design().axes());
        axes.add(TestCell.axis(7));
        StudyRequest after = change(BASE, List.copyOf(axes), "design", "axes");
        after = change(after, euro(5000), "catalogue", "driveUnits", "#unit-large", "price");
        ComparisonResult result = compare(BASE, after);
        String added = result.changes().stream()
                .filter(change -> change.path().equals("/design/axes/axis-7"))
                .map(InputChange::id)
                .findFirst()
                .orElseThrow();
        assertThat(result.changes()).hasSize(2);
        assertThat(at("/duty/axes/axis-7", result).causes())
                .containsExactly(new Cause(added, Role.NECESSARY_AND_SUFFICIENT));
    }

    @Test
    void findingsOfTheOtherAxesStayWhenAnAxisBeforeThemGoes() {
        List<Axis> axes = new ArrayList<>(BASE.design().axes());
        axes.removeFirst();
        List<Finding> before = SystemStudy.proving().system(BASE).findings();
        List<Finding> after = SystemStudy.proving()
                .system(change(BASE, List.copyOf(axes), "design", "axes"))
                .findings();
        Finding last = before.stream()
                .filter(f -> f.subject().equals("axis-3"))
                .findFirst()
                .orElseThrow();
        assertThat(after)
                .anySatisfy(f -> assertThat(f.code()).isEqualTo(last.code()))
                .noneSatisfy(f -> assertThat(f.pointer() + f.code()).isEqualTo(last.pointer() + last.code()));
        assertThat(FindingDifferences.between(before, after))
                .extracting(Difference::place)
                .noneMatch(place -> place.contains(":axis-2") || place.contains(":axis-3"));
    }

    @Test
    void puttingInEveryDifferenceGivesTheSecondAndBackwardsIsTheInverse() {
        StudyRequest after = heavier(heavier(BASE, "axis-1", 90), "axis-3", 20);
        List<Axis> axes = new ArrayList<>(after.design().axes());
        axes.remove(0);
        after = change(after, List.copyOf(axes), "design", "axes");
        List<Difference> forth = Differences.between(BASE, after, Set.of());
        StudyRequest patched = BASE;
        for (Difference difference : forth) {
            patched = Patch.putIn(patched, difference);
        }
        assertThat(patched).isEqualTo(after);
        List<Difference> back = Differences.between(after, BASE, Set.of());
        assertThat(back)
                .extracting(Difference::place)
                .containsExactlyInAnyOrderElementsOf(
                        forth.stream().map(Difference::place).toList());
        for (Difference difference : back) {
            patched = Patch.putIn(patched, difference);
        }
        assertThat(patched).isEqualTo(BASE);
    }

    /** The independent route: the roles are checked by studies of our own, without the comparison's trials. */
    @Test
    void rolesHoldWhenStudiedAgain() {
        StudyRequest onlyFirst = heavier(BASE, "axis-1", 170);
        StudyRequest onlySecond = change(BASE, new Temperature(273.15 + 55), "design", "site", "enclosureAmbient");
        StudyRequest both = change(onlyFirst, new Temperature(273.15 + 55), "design", "site", "enclosureAmbient");
        ComparisonResult result = compare(BASE, both);
        assertThat(result.changes())
                .extracting(InputChange::path)
                .containsExactly("/design/site/enclosureAmbient", "/design/axes/axis-1/mechanism/load");
        assertThat(heldRoles(result, "/duty/", onlySecond, onlyFirst)).isGreaterThan(3);
    }

    /** Between versions of the catalogue and between codes just as between designs. */
    @Test
    void theCodeAndWhatTheCatalogueSaysAreCausesToo() {
        Money dearer = new Money(new BigDecimal("450.00"), "EUR");
        String[] price = {"catalogue", "driveUnits", "#unit-small", "price"};
        StudyRequest onlyCode = change(BASE, CodeBasis.NFPA_79, "codeBasis");
        StudyRequest onlyPrice = change(BASE, dearer, price);
        ComparisonResult result = compare(BASE, change(onlyCode, dearer, price));
        assertThat(result.changes())
                .extracting(InputChange::path)
                .containsExactly("/codeBasis", "/catalogue/driveUnits/unit-small/price");
        assertThat(heldRoles(result, "/conductors/", onlyCode, onlyPrice)).isGreaterThan(3);
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).startsWith("/conductors/");
            assertThat(c.causes()).containsExactly(new Cause("change-1", Role.NECESSARY_AND_SUFFICIENT));
        });
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo("/billOfMaterials/required/total");
            assertThat(c.causes()).extracting(Cause::change).contains("change-2");
        });
    }

    /**
     * Holds the roles of two changes in the quantities of a part of the result against studies of their own, each made with one of
     * the changes; says how many quantities it held.
     */
    private static int heldRoles(ComparisonResult result, String part, StudyRequest first, StudyRequest second) {
        SystemStudy study = SystemStudy.proving();
        StudyResult withFirst = study.system(first);
        StudyResult withSecond = study.system(second);
        int checked = 0;
        for (Consequence c : result.consequences()) {
            if (!(c.after() instanceof Quantity) || !c.path().startsWith(part)) {
                continue;
            }
            checked++;
            Object inFirst = value(withFirst, c.path());
            Object inSecond = value(withSecond, c.path());
            // taking the second change back leaves the first alone, and the other way round
            assertThat(role(c, "change-2")).as(c.path()).isEqualTo(expected(inFirst, inSecond, c.before(), c.after()));
            assertThat(role(c, "change-1")).as(c.path()).isEqualTo(expected(inSecond, inFirst, c.before(), c.after()));
        }
        return checked;
    }

    private static Role expected(Object without, Object only, Object before, Object after) {
        boolean undone = Differences.same(without, before);
        boolean brought = Differences.same(only, after);
        if (undone && brought) {
            return Role.NECESSARY_AND_SUFFICIENT;
        }
        if (undone) {
            return Role.NECESSARY;
        }
        if (brought) {
            return Role.SUFFICIENT;
        }
        return Differences.same(without, after) ? null : Role.CONTRIBUTING;
    }

    private static Role role(Consequence consequence, String change) {
        return consequence.causes().stream()
                .filter(c -> c.change().equals(change))
                .map(Cause::role)
                .findFirst()
                .orElse(null);
    }

    private static Object value(StudyResult result, String pointer) {
        Object value = result;
        for (String step : pointer.substring(1).split("/")) {
            Step way = value instanceof List ? new Step.Element(step, 0) : new Step.Member(step);
            value = Patch.at(value, List.of(way));
        }
        return value;
    }

    @Test
    void aPartUnderAnotherIdIsTheSamePart() {
        StudyRequest axisRenamed = change(BASE, "cross-slide", "design", "axes", "#axis-2", "id");
        StudyRequest renamed = change(axisRenamed, "cell", "design", "stopZones", "#zone", "id");
        for (Axis axis : renamed.design().axes()) {
            renamed = change(renamed, "cell", "design", "axes", "#" + axis.id(), "stopZone");
        }
        ComparisonResult result = compare(BASE, renamed);
        assertThat(result.renames())
                .containsExactly(
                        new Rename(NamedPart.AXIS, "axis-2", "cross-slide"),
                        new Rename(NamedPart.STOP_ZONE, "zone", "cell"));
        assertThat(result.changes()).isEmpty();
        assertThat(result.consequences()).isEmpty();
    }

    /** The axes of the zone are named in the study too, so this runs through all of it. */
    @Test
    void aSplitIsListedAndBackwardsAMerge() {
        List<Axis> axes = new ArrayList<>(BASE.design().axes());
        Axis one = axes.removeLast();
        axes.add(half(one, "left", 25));
        axes.add(half(one, "right", 15));
        StudyRequest after = change(BASE, List.copyOf(axes), "design", "axes");
        ComparisonResult forth = compare(BASE, after);
        assertThat(forth.renames()).isEmpty();
        assertThat(forth.splits())
                .extracting(Division::text)
                .containsExactly("Axis axis-3 was split into axis left and axis right: load 40 kg = 25 kg + 15 kg.");
        assertThat(forth.changes())
                .extracting(InputChange::path)
                .containsExactly("/design/axes/axis-3", "/design/axes/left", "/design/axes/right");
        ComparisonResult back = compare(after, BASE);
        assertThat(back.splits()).isEmpty();
        assertThat(back.merges()).extracting(Division::whole).containsExactly("axis-3");
    }

    private static Axis half(Axis axis, String id, double kilograms) {
        Mechanism lighter = Copies.with((Belt) axis.mechanism(), "load", new Mass(kilograms));
        return Copies.with(Copies.with(axis, "id", id), "mechanism", lighter);
    }

    @Test
    void whatElseChangedOnARenamedPartIsAChangeOfThatPart() {
        StudyRequest renamed = change(heavier(BASE, "axis-2", 170), "cross-slide", "design", "axes", "#axis-2", "id");
        ComparisonResult result = compare(BASE, renamed);
        assertThat(result.renames()).containsExactly(new Rename(NamedPart.AXIS, "axis-2", "cross-slide"));
        assertThat(result.changes())
                .extracting(InputChange::path)
                .containsExactly("/design/axes/cross-slide/mechanism/load");
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.path()).isEqualTo("/duty/axes/cross-slide/driveUnit");
            assertThat(c.causes()).containsExactly(new Cause("change-1", Role.NECESSARY_AND_SUFFICIENT));
        });
    }

    /** Another axis in its place: other load, cycle, position, drive. */
    @Test
    void anotherPartIsNoRename() {
        Axis last = BASE.design().axes().getLast();
        StudyRequest other = heavier(BASE, last.id(), 3);
        other = change(other, "other", "design", "axes", "#" + last.id(), "id");
        other = change(other, new Length(9), "design", "axes", "#other", "position", "x");
        other = change(other, new Length(9), "design", "axes", "#other", "position", "y");
        other = change(other, "another thing", "design", "axes", "#other", "description");
        ComparisonResult result = compare(BASE, other);
        assertThat(result.renames()).isEmpty();
        assertThat(result.changes()).extracting(InputChange::kind).contains(ChangeKind.ADDED, ChangeKind.REMOVED);
    }

    @Test
    void aBudgetTooSmallIsSaid() {
        StudyRequest after = heavier(heavier(BASE, "axis-1", 90), "axis-2", 90);
        ComparisonResult result = COMPARISON.compare(new ComparisonRequest(BASE, after, 3));
        assertThat(result.notExamined()).containsExactly("change-2");
        assertThat(result.studies()).isEqualTo(2);
    }

    /** Each of three loads acts together with the mains, and all do: of ten studies the four single changes leave two. */
    @Test
    void aBudgetUsedUpByJointCausesIsSaid() {
        StudyRequest after = heavier(heavier(heavier(BASE, "axis-1", 170), "axis-2", 170), "axis-3", 170);
        after = change(after, new Voltage(380), "design", "mains", "voltage");
        ComparisonResult enough = COMPARISON.compare(new ComparisonRequest(BASE, after, 100));
        assertThat(enough.notExamined()).isEmpty();
        assertThat(enough.studies()).isGreaterThan(10);

        ComparisonResult tight = COMPARISON.compare(new ComparisonRequest(BASE, after, 10));
        assertThat(tight.studies()).isEqualTo(10);
        assertThat(tight.notExamined()).isNotEmpty().allSatisfy(place -> {
            assertThat(at(place, enough).minimal()).isTrue();
            assertThat(at(place, enough).text()).endsWith(" (only together).");
            assertThat(at(place, tight).minimal()).isFalse();
            assertThat(at(place, tight).together()).isEmpty();
            assertThat(at(place, tight).text()).doesNotContain("together");
        });
    }

    /** Of each kind: 10 K between 45 and 55 Cel, though 10 K itself would be -263 Cel; bought items in whole numbers; money to the cent. */
    @Test
    void whatLiesBetweenIsSaidOfQuantitiesNumbersAndMoney() {
        assertThat(Deltas.ofQuantities(new Temperature(318.15), new Temperature(328.15)))
                .isEqualTo(new TemperatureRise(10));
        assertThat(Deltas.ofQuantities(new Mass(40), new Length(1))).isNull();
        assertThat(Deltas.ofMoney(euro(3), new Money(new BigDecimal("1.20"), "EUR")))
                .isEqualTo(new MoneyDifference("-1.80", "EUR"));
        assertThat(Deltas.ofMoney(euro(3), new Money(BigDecimal.ONE, "USD"))).isNull();
        assertThat(Deltas.ofNumbers(0.2, 0.3)).isEqualTo(0.1);
        assertThat(Deltas.ofQuantities(ConductorSize.metric("1.5"), ConductorSize.metric("16")))
                .isInstanceOfSatisfying(
                        Area.class, area -> assertThat(area.si()).isCloseTo(14.5e-6, within(1e-15)));
        ComparisonResult result = compare(BASE, heavier(BASE, "axis-2", 170));
        Consequence total = at("/billOfMaterials/required/total", result);
        var paid = (Money) total.before();
        var price = (Money) total.after();
        assertThat(total.moneyDifference())
                .isEqualTo(new MoneyDifference(
                        price.amount().subtract(paid.amount()).toPlainString(), "EUR"));
        assertThat(total.difference()).isNull();
        Consequence small = at("/billOfMaterials/required/lines/required:unit-small/quantity", result);
        assertThat(List.of(small.before(), small.after()))
                .extracting(Object::toString)
                .containsExactly("4", "3");
        assertThat(small.numberDifference()).isEqualTo(-1.0);
        assertThat(result.consequences()).anySatisfy(c -> {
            assertThat(c.after()).isInstanceOf(Temperature.class);
            assertThat(c.difference()).isInstanceOf(TemperatureRise.class);
        });
    }

    /** 50 kg more, 0.1 more, 150 EUR more, 10 K more; what is no number has no difference. */
    @Test
    void whatLiesBetweenIsSaidOfTheCallersChangesToo() {
        StudyRequest after = change(heavier(BASE, "axis-1", 90), 0.3, "design", "controlPower", "reserve");
        after = change(after, euro(550), "catalogue", "driveUnits", "#unit-small", "price");
        after = change(after, new Temperature(273.15 + 45), "design", "site", "ambient");
        after = change(after, "renamed machine", "design", "name");
        assertThat(compare(BASE, after).changes())
                .extracting(
                        InputChange::path,
                        InputChange::difference,
                        InputChange::moneyDifference,
                        InputChange::numberDifference)
                .containsExactlyInAnyOrder(
                        tuple("/design/axes/axis-1/mechanism/load", new Mass(50), null, null),
                        tuple("/design/controlPower/reserve", null, null, 0.1),
                        tuple(
                                "/catalogue/driveUnits/unit-small/price",
                                null,
                                new MoneyDifference("150.00", "EUR"),
                                null),
                        tuple("/design/site/ambient", new TemperatureRise(10), null, null),
                        tuple("/design/name", null, null, null));
    }

    private static StudyRequest withSegments(StudyRequest request, List<Segment> segments) {
        return change(request, List.copyOf(segments), "design", "axes", "#axis-1", "cycle", "segments");
    }

    /** Segments have no ids: whatever goes or comes moves those behind, so they are one change, and putting it in gives the second. */
    @Test
    void aListWithoutIdsThatGrewOrShrankIsOneChange() {
        List<Segment> four = axis(BASE, "axis-1").cycle().segments();
        StudyRequest two = withSegments(BASE, four.subList(2, 4));
        List<Segment> five = new ArrayList<>(four);
        five.addFirst(new Dwell(new Time(0.3), null, null, false));
        for (StudyRequest after : List.of(two, withSegments(BASE, five))) {
            List<Difference> forth = Differences.between(BASE, after, Set.of());
            assertThat(forth).extracting(Difference::place).containsExactly("/design/axes/axis-1/cycle/segments");
            assertThat(Patch.putIn(BASE, forth.getFirst())).isEqualTo(after);
            assertThat(Patch.takeBack(after, forth.getFirst())).isEqualTo(BASE);
        }
        assertThat(compare(BASE, two).consequences())
                .extracting(Consequence::text)
                .anyMatch(
                        text -> text.endsWith(
                                ", because segments of cycle of axis axis-1 changed: 2 went at the front (this alone does it)."));
        assertThat(ListWords.of(four, five)).isEqualTo("1 came at the front");
        assertThat(ListWords.of(List.of(1, 2, 3, 4), List.of(1, 9, 4))).isEqualTo("1 came for 2 after the first 1");
        assertThat(ListWords.of(List.of(1, 1, 2), List.of(1, 2))).isEqualTo("1 went after the first 1");
    }

    private static Axis axis(StudyRequest request, String id) {
        return request.design().axes().stream()
                .filter(axis -> axis.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Whatever is edited: the changes put in one after the other give the second design, taken back the first, in any order. */
    @Test
    void puttingInAndTakingBackHoldForRandomEdits() {
        var random = new Random(7);
        for (int round = 0; round < 200; round++) {
            StudyRequest after = BASE;
            for (int edit = random.nextInt(1, 5); edit > 0; edit--) {
                after = edited(after, random);
            }
            List<Difference> changes = new ArrayList<>(Differences.between(BASE, after, Set.of()));
            assertThat(Differences.between(after, BASE, Set.of()))
                    .extracting(Difference::place)
                    .containsExactlyInAnyOrderElementsOf(
                            changes.stream().map(Difference::place).toList());
            Collections.shuffle(changes, random);
            StudyRequest there = BASE;
            StudyRequest back = after;
            for (Difference change : changes) {
                there = Patch.putIn(there, change);
                back = Patch.takeBack(back, change);
            }
            assertThat(Differences.between(there, after, Set.of()))
                    .as("round %d", round)
                    .isEmpty();
            assertThat(Differences.between(back, BASE, Set.of()))
                    .as("round %d", round)
                    .isEmpty();
        }
    }

    private static StudyRequest edited(StudyRequest request, Random random) {
        List<Axis> axes = new ArrayList<>(request.design().axes());
        Axis axis = axes.get(random.nextInt(axes.size()));
        List<Segment> segments = new ArrayList<>(axis.cycle().segments());
        switch (random.nextInt(5)) {
            case 0 ->
                segments.add(
                        random.nextInt(segments.size() + 1),
                        new Dwell(new Time(1 + random.nextInt(5)), null, null, false));
            case 1 -> segments.remove(segments.size() > 1 ? random.nextInt(segments.size()) : 0);
            case 2 -> Collections.shuffle(segments, random);
            case 3 -> {
                return heavier(request, axis.id(), 1 + random.nextInt(50));
            }
            default -> {
                axes.remove(axis);
                axes.add(random.nextInt(axes.size() + 1), TestCell.axis(10 + random.nextInt(5)));
                boolean twice = axes.stream().map(Axis::id).distinct().count() < axes.size();
                return twice ? request : change(request, List.copyOf(axes), "design", "axes");
            }
        }
        return change(request, List.copyOf(segments), "design", "axes", "#" + axis.id(), "cycle", "segments");
    }

    /** The same machine; which of two terminals with the same margin is called the worst is all that may differ. */
    @Test
    void axesInAnotherOrderAreNoChange() {
        List<Axis> axes = new ArrayList<>(BASE.design().axes());
        Collections.reverse(axes);
        ComparisonResult result = compare(BASE, change(BASE, List.copyOf(axes), "design", "axes"));
        assertThat(result.changes()).isEmpty();
        assertThat(result.consequences()).extracting(Consequence::path).isSubsetOf("/controlPower/worst/subject");
    }

    /** The same code of the same subject with the same figures, but graver. */
    @Test
    void aFindingThatSaysSomethingElseHasChanged() {
        Finding finding = SystemStudy.proving().system(BASE).findings().getFirst();
        Severity other = finding.severity() == Severity.VIOLATION ? Severity.NOTE : Severity.VIOLATION;
        for (Finding changed : List.of(
                Copies.with(finding, "severity", other),
                Copies.with(finding, "text", "Other words."),
                Copies.with(finding, "remedy", "Another remedy."))) {
            assertThat(FindingDifferences.between(List.of(finding), List.of(changed)))
                    .extracting(Difference::kind)
                    .containsExactly(ChangeKind.CHANGED);
        }
        Finding moved = Copies.with(finding, "pointer", "/design/axes/3");
        assertThat(FindingDifferences.between(List.of(finding), List.of(moved))).isEmpty();
    }

    private static Money euro(int amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    private static Consequence at(String path, ComparisonResult result) {
        return result.consequences().stream()
                .filter(c -> c.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    /** An axis in a zone that is new as well: neither the design with the axis alone has a meaning nor that without the zone. */
    @Test
    void changesThatNeedEachOtherToHaveAMeaningAreTriedTogether() {
        StopZone zone = Copies.with(BASE.design().stopZones().getFirst(), "id", "annex");
        Axis axis = Copies.with(Copies.with(TestCell.axis(4), "id", "feeder"), "stopZone", "annex");
        StudyRequest after = change(BASE, zone, "design", "stopZones", "#annex");
        after = change(change(after, axis, "design", "axes", "#feeder"), "renamed machine", "design", "name");
        ComparisonResult result = compare(BASE, after);
        Map<String, String> ids = result.changes().stream().collect(toMap(InputChange::path, InputChange::id));
        String name = ids.get("/design/name");
        String feeder = ids.get("/design/axes/feeder");
        String annex = ids.get("/design/stopZones/annex");
        assertThat(result.notExamined()).containsExactlyInAnyOrder(feeder, annex);
        Consequence came = at("/duty/axes/feeder", result);
        assertThat(came.causes()).containsExactly(new Cause(feeder, Role.NECESSARY));
        assertThat(came.onlyTogether()).isTrue();
        assertThat(came.together()).containsExactlyInAnyOrder(feeder, annex).doesNotContain(name);
        assertThat(came.minimal()).isTrue();
        assertThat(came.text()).contains("axis feeder was added", "stop zone annex was added", "(only together)");
    }

    /** The axis may come alone; what ties it to a place may not, nor may the axis go while that stays. */
    @Test
    void whatBringsAConsequenceAloneButCannotBeTakenBackAloneIsSaidToBringIt() {
        Axis axis = Copies.with(TestCell.axis(4), "id", "feeder");
        StudyRequest after = change(BASE, axis, "design", "axes", "#feeder");
        FixedPlace fixed = new FixedPlace("feeder", "panel-0");
        after = change(after, List.of(fixed), "design", "network", "fixed");
        ComparisonResult result = compare(BASE, after);
        Map<String, String> ids = result.changes().stream().collect(toMap(InputChange::path, InputChange::id));
        String feeder = ids.get("/design/axes/feeder");
        Consequence came = at("/duty/axes/feeder", result);
        assertThat(came.causes()).contains(new Cause(feeder, Role.SUFFICIENT));
        assertThat(came.text()).contains("axis feeder was added (enough by itself)");
    }

    /** Nothing is said of what no change does alone while there are changes nobody has looked at. */
    @Test
    void whatWasNotExaminedIsNotClaimed() {
        StudyRequest after = heavier(heavier(BASE, "axis-1", 170), "axis-2", 170);
        ComparisonResult result = COMPARISON.compare(new ComparisonRequest(BASE, after, 2));
        assertThat(result.notExamined()).containsExactly("change-2");
        assertThat(result.consequences()).noneMatch(Consequence::onlyTogether);
        assertThat(at("/duty/axes/axis-2/driveUnit", result).text())
                .endsWith(", which none of the changes that were examined brings or undoes by itself.");
    }

    /** Every price of the catalogue moves, and the budget is for three changes: one of each part of the request. */
    @Test
    void manyChangesOfTheCatalogueLeaveStudiesForTheDesign() {
        StudyRequest after = change(heavier(BASE, "axis-1", 170), CodeBasis.NFPA_79, "codeBasis");
        for (DriveUnit unit : BASE.catalogue().driveUnits()) {
            after = change(after, euro(1000), "catalogue", "driveUnits", "#" + unit.id(), "price");
        }
        for (BrakingUnit unit : BASE.catalogue().brakingUnits()) {
            after = change(after, euro(1000), "catalogue", "brakingUnits", "#" + unit.id(), "price");
        }
        ComparisonResult result = COMPARISON.compare(new ComparisonRequest(BASE, after, 7));
        List<InputChange> examined = result.changes().stream()
                .filter(c -> !result.notExamined().contains(c.id()))
                .toList();
        assertThat(examined)
                .extracting(InputChange::path)
                .containsExactly(
                        "/codeBasis", "/catalogue/driveUnits/unit-small/price", "/design/axes/axis-1/mechanism/load");
    }
}
