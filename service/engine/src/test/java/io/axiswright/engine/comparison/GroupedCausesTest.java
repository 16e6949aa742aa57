package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.graph.Components;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import io.axiswright.engine.topology.SearchGate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The same change at many places of a catalogue. */
@org.jspecify.annotations.NullUnmarked
class GroupedCausesTest {

    private static final Comparison COMPARISON = new Comparison(new SearchGate(1));

    /** With some things more that nobody needs, so that there are prices enough, and prices that do nothing. */
    private static final StudyRequest BASE = withAccessories(TestCell.request(3), 12);

    private static StudyRequest withAccessories(StudyRequest request, int count) {
        List<Accessory> accessories = new ArrayList<>(request.catalogue().accessories());
        for (int k = 0; k < count; k++) {
            accessories.add(new Accessory(
                    "spare-thing-" + k, "of no use", new Money(BigDecimal.valueOf(10 + k), "EUR"), List.of()));
        }
        return Copies.with(
                request, "catalogue", Copies.with(request.catalogue(), "accessories", List.copyOf(accessories)));
    }

    /** All that the catalogue says of money, its currency among it. */
    private static StudyRequest priced(StudyRequest request, UnaryOperator<Money> next, String currency) {
        var catalogue = Records.with(request.catalogue(), "currency", currency);
        Components tables = Components.of(catalogue);
        for (int k = 0; k < tables.count(); k++) {
            if (tables.get(catalogue, k) instanceof List<?> rows) {
                catalogue = tables.with(
                        catalogue,
                        k,
                        rows.stream().map(row -> repriced(row, next)).toList());
            }
        }
        return Copies.with(request, "catalogue", catalogue);
    }

    private static Object repriced(Object row, UnaryOperator<Money> next) {
        int place = Components.of(row).place("price");
        return place >= 0 && Components.of(row).get(row, place) instanceof Money price
                ? Components.of(row).with(row, place, next.apply(price))
                : row;
    }

    private static StudyRequest heavier(StudyRequest request) {
        List<Step> way = List.of(
                new Step.Member("design"),
                new Step.Member("axes"),
                new Step.Element("axis-1", 1),
                new Step.Member("mechanism"),
                new Step.Member("load"));
        return Patch.putIn(request, new Difference(way, ChangeKind.CHANGED, null, new Mass(170)));
    }

    private static ComparisonResult compare(StudyRequest before, StudyRequest after, int budget) {
        return COMPARISON.compare(new ComparisonRequest(before, after, budget));
    }

    /** No price can be in another currency than its catalogue, so no single one of the changes has a meaning. */
    @Test
    void aCatalogueInAnotherCurrencyIsOneCause() {
        StudyRequest after = priced(BASE, price -> new Money(price.amount(), "USD"), "USD");
        ComparisonResult result = compare(BASE, after, 100);
        assertThat(result.groups()).singleElement().satisfies(group -> {
            assertThat(group.changes())
                    .containsExactlyElementsOf(
                            result.changes().stream().map(InputChange::id).toList());
            assertThat(group.text())
                    .isEqualTo("the currency changed from EUR to USD at "
                            + result.changes().size() + " places");
            assertThat(group.eachExamined()).isFalse();
        });
        assertThat(result.studies()).isLessThan(10);
        assertThat(result.notExamined()).isEmpty();
        assertThat(result.consequences()).isNotEmpty().allSatisfy(c -> {
            assertThat(c.causes()).containsExactly(new Cause("group-1", Role.NECESSARY_AND_SUFFICIENT));
            assertThat(c.text()).contains(", because the currency changed from EUR to USD at ");
        });
    }

    /**
     * The independent route: what is said of the group and of single prices is studied again, with them put in and taken back by hand. The
     * budget is large enough to come down to every price that matters.
     */
    @Test
    void aPriceListIsOneCauseUnlessASinglePriceDoesIt() {
        UnaryOperator<Money> dearer = price -> new Money(price.amount().multiply(new BigDecimal("1.25")), "EUR");
        StudyRequest after = heavier(priced(BASE, dearer, "EUR"));
        ComparisonResult result = compare(BASE, after, 400);
        assertThat(result.groups()).hasSize(1);
        ChangeGroup group = result.groups().getFirst();
        assertThat(group.changes()).hasSizeGreaterThan(12);

        List<Difference> differences = Differences.between(BASE, after, Set.of());
        Map<String, Difference> changes = result.changes().stream()
                .collect(Collectors.toMap(
                        InputChange::id,
                        change -> differences.stream()
                                .filter(d -> d.place().equals(change.path()))
                                .findFirst()
                                .orElseThrow()));
        Function<String, List<Difference>> members = id -> (id.equals(group.id()) ? group.changes() : List.of(id))
                .stream().map(changes::get).toList();
        SystemStudy study = SystemStudy.proving();
        StudyResult before = study.system(BASE);
        StudyResult second = study.system(after);
        Set<String> named = result.consequences().stream()
                .flatMap(c -> c.causes().stream())
                .map(Cause::change)
                .collect(Collectors.toSet());
        assertThat(named).contains(group.id()).anyMatch(group.changes()::contains);
        for (String id : named) {
            StudyRequest only = BASE;
            StudyRequest without = after;
            for (Difference change : members.apply(id)) {
                only = Patch.putIn(only, change);
                without = Patch.takeBack(without, change);
            }
            StudyResult brought = study.system(only);
            StudyResult undone = study.system(without);
            for (Consequence c : result.consequences()) {
                c.causes().stream().filter(cause -> cause.change().equals(id)).forEach(cause -> {
                    boolean brings = !unlike(second, brought, c.path());
                    boolean undoes = !unlike(before, undone, c.path());
                    assertThat(cause.role()).as("%s: %s", id, c.path()).isEqualTo(role(undoes, brings));
                });
            }
        }
    }

    private static boolean unlike(StudyResult one, StudyResult other, String place) {
        return ResultDifferences.between(one, other).stream()
                .map(Difference::place)
                .anyMatch(p -> p.equals(place) || p.startsWith(place + "/") || place.startsWith(p + "/"));
    }

    private static Role role(boolean undoes, boolean brings) {
        if (undoes) {
            return brings ? Role.NECESSARY_AND_SUFFICIENT : Role.NECESSARY;
        }
        return brings ? Role.SUFFICIENT : Role.CONTRIBUTING;
    }

    /** Only one study for the group and one for the load can be afforded in each direction: the prices stay one cause. */
    @Test
    void whatCannotBeAffordedStaysAGroup() {
        UnaryOperator<Money> dearer = price -> new Money(price.amount().add(BigDecimal.ONE), "EUR");
        ComparisonResult result = compare(BASE, heavier(priced(BASE, dearer, "EUR")), 5);
        assertThat(result.groups()).singleElement().returns(false, ChangeGroup::eachExamined);
        assertThat(result.studies()).isLessThanOrEqualTo(5);
        assertThat(result.consequences())
                .flatExtracting(Consequence::causes)
                .extracting(Cause::change)
                .contains("group-1")
                .noneMatch(result.groups().getFirst().changes()::contains);
        assertThat(result.consequences()).noneMatch(Consequence::onlyTogether);
    }
}
