package io.axiswright.engine.bill;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Follows the needs of each demand, and the rules that count what it brings, down to items that bring nothing more. Items are taken in an order in which each stands
 * before what it needs, so each is met once, with its whole quantity; the cost is that of the answer, however many ways
 * lead to an item.
 */
final class Explosion {

    private static final LineKind[] KINDS = LineKind.values();

    /** A line in the making. */
    record Key(Offer offer, LineKind kind) {

        String lineId() {
            return BillLine.id(kind, offer.item().id());
        }

        /** No two offers have one rank; hashing all there is to an item takes a tenth of making the bill. */
        @Override
        public int hashCode() {
            return KINDS.length * offer.rank() + kind.ordinal();
        }
    }

    private final Map<String, Offer> offers;
    private final DemandRules rules;
    private final Map<Integer, Offer> byRank = new HashMap<>();
    private final Map<Key, List<LineDemand>> lines = new HashMap<>();

    Explosion(Map<String, Offer> offers, DemandRules rules) {
        this.offers = offers;
        this.rules = rules;
        offers.values().forEach(offer -> byRank.put(offer.rank(), offer));
    }

    /** The demands on each line, in the order of the request's demands; in no order of lines. */
    Map<Key, List<LineDemand>> of(List<Demand> demands) {
        for (int number = 0; number < demands.size(); number++) {
            follow(number, demands.get(number));
        }
        return lines;
    }

    private void follow(int number, Demand demand) {
        var open = new TreeMap<Integer, BigDecimal>();
        ask(
                number,
                demand,
                key(demand.item(), LineKind.of(demand.kind())),
                Rules.plain(demand.quantity()),
                demand.reason(),
                null,
                demand.rule(),
                open);
        for (var at = open.pollFirstEntry(); at != null; at = open.pollFirstEntry()) {
            var parent = new Key(offer(at.getKey() / KINDS.length), KINDS[at.getKey() % KINDS.length]);
            for (var need : parent.offer().item().needs()) {
                if (Rules.holds(need, demand)) {
                    var child = key(need.item(), Rules.kind(parent.kind(), need.kind()));
                    ask(
                            number,
                            demand,
                            child,
                            Rules.times(at.getValue(), need),
                            need.reason(),
                            parent.lineId(),
                            null,
                            open);
                }
            }
            for (var share : rules.shares(parent.offer().item(), demand)) {
                ask(
                        number,
                        demand,
                        key(
                                share.item().id(),
                                Rules.kind(parent.kind(), share.rule().kind())),
                        Rules.plain(at.getValue().multiply(share.perUnit())),
                        share.rule().reason(),
                        parent.lineId(),
                        share.rule().id(),
                        open);
            }
        }
    }

    private void ask(
            int number,
            Demand demand,
            Key key,
            BigDecimal quantity,
            String reason,
            @Nullable String via,
            @Nullable String rule,
            TreeMap<Integer, BigDecimal> open) {
        lines.computeIfAbsent(key, _ -> new ArrayList<>())
                .add(new LineDemand(number, demand.asker(), quantity, reason, demand.pointer(), via, rule));
        open.merge(key.offer().rank() * KINDS.length + key.kind().ordinal(), quantity, BigDecimal::add);
    }

    private Key key(String item, LineKind kind) {
        return new Key(Objects.requireNonNull(offers.get(item)), kind);
    }

    private Offer offer(int rank) {
        return Objects.requireNonNull(byRank.get(rank));
    }
}
