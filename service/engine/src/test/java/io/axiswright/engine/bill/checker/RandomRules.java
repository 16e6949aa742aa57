package io.axiswright.engine.bill.checker;

import io.axiswright.engine.catalogue.Alternate;
import io.axiswright.engine.catalogue.AlternateChoice;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.condition.AllOf;
import io.axiswright.engine.condition.AnyOf;
import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.FlagAttribute;
import io.axiswright.engine.condition.FlagTest;
import io.axiswright.engine.condition.NoneOf;
import io.axiswright.engine.condition.QuantityAttribute;
import io.axiswright.engine.condition.QuantityTest;
import io.axiswright.engine.condition.Reach;
import io.axiswright.engine.condition.Relation;
import io.axiswright.engine.condition.WordAttribute;
import io.axiswright.engine.condition.WordTest;
import io.axiswright.engine.design.ItemKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Demand rules made at random: any condition that makes sense, alternates from a given list. */
public final class RandomRules {

    private static final Relation[] RELATIONS = Relation.values();
    private static final NeedKind[] KINDS = NeedKind.values();

    private final SplittableRandom random;
    private int made;

    /** Rules of one sequence of numbers. */
    public RandomRules(SplittableRandom random) {
        this.random = random;
    }

    /** A rule over parts of the design. */
    public DemandRule of(DemandBasis per, List<String> items) {
        return rule(per, null, null, items);
    }

    /** A rule that counts an item. */
    public DemandRule counting(DemandBasis per, String item, List<String> items) {
        return rule(per, item, null, items);
    }

    /** A rule that counts items of a kind. */
    public DemandRule counting(DemandBasis per, ItemKind kind, List<String> items) {
        return rule(per, null, kind, items);
    }

    private DemandRule rule(
            DemandBasis per, @Nullable String countedItem, @Nullable ItemKind countedKind, List<String> items) {
        var kind = KINDS[random.nextInt(KINDS.length)];
        boolean conditional = kind == NeedKind.CONDITIONAL || kind != NeedKind.REQUIRED && random.nextBoolean();
        var alternates = new ArrayList<Alternate>();
        for (int k = random.nextInt(3); k >= 0; k--) {
            alternates.add(new Alternate(
                    items.get(random.nextInt(items.size())), random.nextInt(3) == 0 ? condition(per, 1) : null));
        }
        return new DemandRule(
                "rule-" + made++,
                per,
                countedItem,
                countedKind,
                conditional ? condition(per, 0) : null,
                kind,
                random.nextInt(1, 60) / 20.0,
                alternates,
                random.nextBoolean() ? AlternateChoice.CHEAPEST : null,
                "because of a rule");
    }

    private Condition condition(DemandBasis per, int depth) {
        return switch (random.nextInt(depth > 2 ? 3 : 6)) {
            case 0 -> quantity(per);
            case 1 ->
                new FlagTest(one(Arrays.stream(FlagAttribute.values())
                        .filter(a -> known(per, a.reach()))
                        .toList()));
            case 2 -> word(per);
            case 3 -> new AllOf(several(per, depth));
            case 4 -> new AnyOf(several(per, depth));
            default -> new NoneOf(several(per, depth));
        };
    }

    private List<Condition> several(DemandBasis per, int depth) {
        return IntStream.range(0, random.nextInt(1, 4))
                .mapToObj(_ -> condition(per, depth + 1))
                .toList();
    }

    private Condition quantity(DemandBasis per) {
        QuantityAttribute attribute = one(Arrays.stream(QuantityAttribute.values())
                .filter(a -> known(per, a.reach()))
                .toList());
        return new QuantityTest(
                attribute,
                RELATIONS[random.nextInt(RELATIONS.length)],
                attribute.dimension().of(random.nextInt(1, 12)));
    }

    private Condition word(DemandBasis per) {
        WordAttribute attribute = one(Arrays.stream(WordAttribute.values())
                .filter(a -> known(per, a.reach()) && !a.namesItem())
                .toList());
        return new WordTest(attribute, List.of(one(attribute.words()), one(attribute.words())));
    }

    private static boolean known(DemandBasis per, Reach reach) {
        return per.askers().stream().anyMatch(asker -> asker.knows(reach));
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
