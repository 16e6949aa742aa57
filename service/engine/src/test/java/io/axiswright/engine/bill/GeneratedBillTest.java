package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.checker.PlainRules;
import io.axiswright.engine.bill.checker.RandomRules;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.condition.FlagAttribute;
import io.axiswright.engine.condition.QuantityAttribute;
import io.axiswright.engine.condition.Reach;
import io.axiswright.engine.condition.WordAttribute;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
        addRules(shop, n, random);
        return shop.catalogue();
    }

    /** Rules over parts of the design, over single items that bring later ones, and over kinds, which bring what leads nowhere. */
    private static void addRules(Shop shop, int n, SplittableRandom random) {
        shop.accessory("end-1", "0.75").accessory("end-2", null);
        var rules = new RandomRules(random);
        var all = IntStream.range(0, n).mapToObj(k -> "i" + k).toList();
        for (int k = random.nextInt(4); k > 0; k--) {
            shop.rule(rules.of(random.nextBoolean() ? DemandBasis.MACHINE : DemandBasis.AXIS, all));
        }
        for (int k = random.nextInt(4); k > 0; k--) {
            int counted = random.nextInt(n - 1);
            shop.rule(rules.counting(DemandBasis.ITEM, "i" + counted, all.subList(counted + 1, n)));
        }
        if (random.nextBoolean()) {
            shop.rule(rules.counting(DemandBasis.LENGTH, ItemKind.BULK_CABLE, List.of("end-1", "end-2")));
            shop.rule(rules.counting(DemandBasis.ITEM, ItemKind.FOOT_KIT, List.of("end-2", "end-1")));
        }
    }

    /** The machine and the axes "asker0" to "asker7", with facts at random. */
    private static List<Asker> askers(SplittableRandom random) {
        var machine = new Facts(
                Map.of(QuantityAttribute.AXES, new Ratio(random.nextInt(1, 12))),
                Map.of(WordAttribute.CODE_BASIS, random.nextBoolean() ? "NFPA_79" : "IEC_60204_1"),
                Set.of());
        var askers = new ArrayList<Asker>();
        askers.add(new Asker(Reach.MACHINE, "the machine", "/design", List.of(), machine));
        for (int k = 0; k < 8; k++) {
            var flags = Arrays.stream(FlagAttribute.values())
                    .filter(_ -> random.nextBoolean())
                    .collect(Collectors.toSet());
            var own = new Facts(
                    Map.of(QuantityAttribute.SPUR_LENGTH, new Length(random.nextInt(1, 12))), Map.of(), flags);
            askers.add(new Asker(
                    Reach.AXIS,
                    "asker" + k,
                    "/design/axes/" + k,
                    List.of(CONDITIONS[random.nextInt(CONDITIONS.length)]),
                    machine.and(own)));
        }
        return askers;
    }

    private static Map<String, Object> plain(Facts facts) {
        Map<String, Object> plain = new HashMap<>();
        facts.quantities().forEach((attribute, value) -> plain.put(attribute.name(), value.si()));
        facts.words().forEach((attribute, word) -> plain.put(attribute.name(), word));
        facts.flags().forEach(flag -> plain.put(flag.name(), true));
        return plain;
    }

    /** What the rules over parts of the design ask for, each as a demand of its asker. */
    private static List<Demand> ruled(Catalogue catalogue, List<Asker> askers) {
        var ruled = new ArrayList<Demand>();
        for (var rule : catalogue.demandRuleList()) {
            for (var asker : askers) {
                String item = PlainRules.item(rule, catalogue, plain(asker.facts()));
                if (item != null && asker.reach().name().equals(rule.per().name())) {
                    ruled.add(new Demand(
                            item,
                            BigDecimal.valueOf(rule.quantity()),
                            rule.kind(),
                            asker.name(),
                            rule.reason(),
                            asker.pointer(),
                            asker.conditions()));
                }
            }
        }
        return ruled;
    }

    private static List<Demand> demands(Catalogue catalogue, SplittableRandom random) {
        int items = (int)
                catalogue.items().filter(item -> item.id().startsWith("i")).count();
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
            Map<String, Object> facts,
            String item,
            String kind,
            BigDecimal quantity,
            Map<String, BigDecimal> sums) {
        sums.merge(kind + " " + item, quantity, BigDecimal::add);
        for (var need : catalogue.find(item).orElseThrow().needs()) {
            if (need.when() != null && !demand.conditions().contains(need.when())) {
                continue;
            }
            explode(
                    catalogue,
                    demand,
                    facts,
                    need.item(),
                    below(kind, need.kind()),
                    quantity.multiply(new BigDecimal(Double.toString(need.quantity()))),
                    sums);
        }
        for (var rule : catalogue.demandRuleList()) {
            var counted = PlainRules.counted(rule, catalogue.find(item).orElseThrow());
            String brought = PlainRules.item(rule, catalogue, facts);
            if (counted.signum() > 0 && brought != null) {
                explode(
                        catalogue,
                        demand,
                        facts,
                        brought,
                        below(kind, rule.kind()),
                        quantity.multiply(counted).multiply(new BigDecimal(Double.toString(rule.quantity()))),
                        sums);
            }
        }
    }

    private static String below(String kind, NeedKind need) {
        if (kind.equals("OPTIONAL")) {
            return "OPTIONAL";
        }
        return kind.equals("CONDITIONAL") && need == NeedKind.REQUIRED ? "CONDITIONAL" : need.toString();
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
            var askers = askers(random);
            var all = Stream.concat(demands.stream(), ruled(catalogue, askers).stream())
                    .toList();
            var facts = askers.stream().collect(Collectors.toMap(Asker::name, a -> plain(a.facts())));
            all.forEach(d -> explode(
                    catalogue,
                    d,
                    Objects.requireNonNull(facts.get(d.asker())),
                    d.item(),
                    d.kind().toString(),
                    d.quantity(),
                    expected));
            expected.replaceAll((_, q) -> q.stripTrailingZeros());

            var bill = new BillMaking()
                    .make(Copies.with(new BillRequest(catalogue, CatalogueSource.SENT, demands), "askers", askers));

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
                    .containsExactly(all.size(), all.size(), expected.size(), expected.size(), expected.size());
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
