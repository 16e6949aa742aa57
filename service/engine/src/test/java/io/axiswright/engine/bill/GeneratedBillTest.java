package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Bills of generated catalogues against a plain recursive explosion, and what must not change them. */
class GeneratedBillTest {

    private static final NeedKind[] KINDS = NeedKind.values();
    private static final DemandCondition[] CONDITIONS = DemandCondition.values();

    /** Items need only later ones, listed in a shuffled order: no circles, and no order the code could lean on. */
    private static Catalogue catalogue(SplittableRandom random) {
        int n = random.nextInt(3, 14);
        var order = new ArrayList<>(IntStream.range(0, n).boxed().toList());
        Collections.shuffle(order, new Random(random.nextLong()));
        var shop = new Shop("EUR");
        for (int k : order) {
            var needs = new ArrayList<Need>();
            for (int to = k + 1; to < n; to++) {
                if (random.nextInt(3) == 0) {
                    var kind = KINDS[random.nextInt(KINDS.length)];
                    double quantity = random.nextBoolean() ? random.nextInt(1, 5) : random.nextInt(1, 100) / 20.0;
                    needs.add(
                            kind == NeedKind.CONDITIONAL
                                    ? need("i" + to, quantity, CONDITIONS[random.nextInt(CONDITIONS.length)])
                                    : need("i" + to, quantity, kind));
                }
            }
            var price = random.nextInt(8) == 0
                    ? null
                    : BigDecimal.valueOf(random.nextInt(10000), 2).toString();
            var array = needs.toArray(new Need[0]);
            switch (random.nextInt(3)) {
                case 0 -> shop.cable("i" + k, price, array);
                case 1 -> shop.foot("i" + k, price, array);
                default -> shop.accessory("i" + k, price, array);
            }
        }
        return shop.catalogue();
    }

    private static List<Demand> demands(Catalogue catalogue, SplittableRandom random) {
        int items = (int) catalogue.items().count();
        return IntStream.range(0, random.nextInt(1, 8))
                .mapToObj(k -> demand(
                        "asker" + k,
                        "i" + random.nextInt(items),
                        BigDecimal.valueOf(random.nextInt(1, 400), random.nextInt(3))
                                .toString(),
                        KINDS[random.nextInt(KINDS.length)],
                        random.ints(random.nextInt(3), 0, CONDITIONS.length)
                                .distinct()
                                .mapToObj(c -> CONDITIONS[c])
                                .toArray(DemandCondition[]::new)))
                .toList();
    }

    /** Every path on its own, in the rules' own words; nothing shared with the code under test. */
    private static void explode(
            Catalogue catalogue,
            Demand demand,
            String item,
            String kind,
            BigDecimal quantity,
            Map<String, BigDecimal> sums) {
        sums.merge(kind + " " + item, quantity, BigDecimal::add);
        for (var need : catalogue.find(item).orElseThrow().needs()) {
            if (need.when() != null && !demand.conditions().contains(need.when())) {
                continue;
            }
            String below = need.kind().toString();
            if (kind.equals("OPTIONAL")) {
                below = "OPTIONAL";
            } else if (kind.equals("CONDITIONAL") && below.equals("REQUIRED")) {
                below = "CONDITIONAL";
            }
            explode(
                    catalogue,
                    demand,
                    need.item(),
                    below,
                    quantity.multiply(new BigDecimal(Double.toString(need.quantity()))),
                    sums);
        }
    }

    private static Map<String, BigDecimal> quantities(BillResult bill) {
        return BillMakingTest.lines(bill)
                .collect(Collectors.toMap(
                        l -> l.kind() + " " + l.item(), l -> l.demanded().stripTrailingZeros()));
    }

    @Test
    void agreesWithTheRecursiveExplosionAndCloses() {
        for (int seed = 0; seed < 1500; seed++) {
            var random = new SplittableRandom(seed);
            var catalogue = catalogue(random);
            var demands = demands(catalogue, random);
            var expected = new HashMap<String, BigDecimal>();
            demands.forEach(d -> explode(catalogue, d, d.item(), d.kind().toString(), d.quantity(), expected));
            expected.replaceAll((_, q) -> q.stripTrailingZeros());

            var bill = new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, demands));

            assertThat(quantities(bill)).as("seed %d", seed).isEqualTo(expected);
            assertThat(bill.closing().gaps()).as("seed %d", seed).isEmpty();
            assertThat(bill.closing())
                    .as("seed %d", seed)
                    .extracting(
                            ClosingCheck::demands,
                            ClosingCheck::demandsMet,
                            ClosingCheck::lines,
                            ClosingCheck::linesDemanded,
                            ClosingCheck::linesBalanced)
                    .containsExactly(demands.size(), demands.size(), expected.size(), expected.size(), expected.size());
            assertThat(bill.closing().needsMet()).isEqualTo(bill.closing().needs());
        }
    }

    @Test
    void theOrderOfDemandsChangesNothingButTheirOrder() {
        for (int seed = 0; seed < 200; seed++) {
            var random = new SplittableRandom(seed);
            var catalogue = catalogue(random);
            var demands = demands(catalogue, random);
            var shuffled = new ArrayList<>(demands);
            Collections.shuffle(shuffled, new Random(seed));

            var before = new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, demands));
            var after = new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, shuffled));

            assertThat(stripped(after)).as("seed %d", seed).isEqualTo(stripped(before));
            assertThat(after.required().total()).isEqualTo(before.required().total());
            assertThat(after.findings()).isEqualTo(before.findings());
            assertThat(after.derivations()).isEqualTo(before.derivations());
            assertThat(after.closing()).isEqualTo(before.closing());
        }
    }

    /** The lines with their demands as a set, known by asker instead of by number. */
    private static List<List<Object>> stripped(BillResult bill) {
        return BillMakingTest.lines(bill)
                .map(l -> List.<Object>of(
                        l.id(),
                        l.quantity(),
                        String.valueOf(l.linePrice()),
                        l.demands().stream()
                                .map(d -> d.asker() + d.quantity() + d.reason() + d.via())
                                .sorted()
                                .toList()))
                .toList();
    }

    @Test
    void threeTimesTheDemandIsThreeTimesTheBill() {
        for (int seed = 0; seed < 200; seed++) {
            var random = new SplittableRandom(seed);
            var catalogue = catalogue(random);
            var demands = demands(catalogue, random);
            var tripled = demands.stream()
                    .map(d -> new Demand(
                            d.item(),
                            d.quantity().multiply(BigDecimal.valueOf(3)),
                            d.kind(),
                            d.asker(),
                            d.reason(),
                            d.pointer(),
                            d.conditions()))
                    .toList();

            var once = quantities(new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, demands)));
            var thrice = quantities(new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, tripled)));

            once.replaceAll((_, q) -> q.multiply(BigDecimal.valueOf(3)).stripTrailingZeros());
            assertThat(thrice).as("seed %d", seed).isEqualTo(once);
        }
    }

    /** Forty storeys with two ways down each: 2^40 paths, which only joining what meets can follow. */
    @Test
    void manyWaysToOneItemCostNothing() {
        var shop = new Shop("EUR");
        for (int k = 0; k < 40; k++) {
            shop.accessory("s" + k, "1", need("l" + k, 1, NeedKind.REQUIRED), need("r" + k, 1, NeedKind.REQUIRED));
            shop.accessory("l" + k, "1", need("s" + (k + 1), 1, NeedKind.REQUIRED));
            shop.accessory("r" + k, "1", need("s" + (k + 1), 1, NeedKind.REQUIRED));
        }
        shop.accessory("s40", "1");

        var bill = new BillMaking()
                .make(new BillRequest(
                        shop.catalogue(), CatalogueSource.SENT, List.of(demand("x", "s0", "1", NeedKind.REQUIRED))));

        assertThat(quantities(bill).get("REQUIRED s40")).isEqualByComparingTo(BigDecimal.valueOf(1L << 40));
        assertThat(bill.closing().closes()).isTrue();
    }

    /** A chain of needs as long as the catalogue does not exhaust the stack. */
    @Test
    void tenThousandLinesInOneChain() {
        var shop = new Shop("EUR");
        for (int k = 0; k < 10_000; k++) {
            shop.accessory(
                    "i" + k, "1.00", k < 9_999 ? new Need[] {need("i" + (k + 1), 1, NeedKind.REQUIRED)} : new Need[0]);
        }

        var bill = new BillMaking()
                .make(new BillRequest(
                        shop.catalogue(), CatalogueSource.SENT, List.of(demand("x", "i0", "1", NeedKind.REQUIRED))));

        assertThat(bill.required().lines()).hasSize(10_000);
        assertThat(bill.required().total().amount()).isEqualByComparingTo("10000");
        assertThat(bill.closing().linesDemanded()).isEqualTo(10_000);
    }
}
