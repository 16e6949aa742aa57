package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A layout known for one problem in another that differs from it in what links and gateways cost and measure, or allows less. Where the
 * difference favours no other layout, all that was proven of it holds still: every layout of the other problem was one of the first, and
 * has become dearer by at least as much as this one. So a layout proven cheapest remains it, and one known to lie within some amount of
 * the cheapest remains within that amount, without a search.
 */
final class CarriedLayout {

    private CarriedLayout() {}

    /**
     * The same layout as an answer to another problem; null where the difference may favour another layout.
     *
     * @param known what was planned for the first problem, with a layout
     * @param to the other problem
     */
    static LayoutSolver.@Nullable Answer to(Planned known, LayoutProblem to) {
        LayoutModel before = known.problem().model();
        LayoutModel after = to.model();
        Layout layout = known.layout();
        if (layout == null
                || !soughtAlike(known.problem().request(), to.request())
                || !known.problem().money().countsAs(to.money())
                || !allowsNoMore(before, after)
                || !holds(after, layout)
                || !favoursNoOther(before, after, layout)) {
            return null;
        }
        long dearer = Score.of(after, layout).cost() - Score.of(before, layout).cost();
        return new LayoutSolver.Answer(layout.copy(), known.bound() + dearer, false);
    }

    private static boolean soughtAlike(TopologyRequest first, TopologyRequest second) {
        return first.effort() == second.effort()
                && Objects.equals(
                        first.network().searchLimit(), second.network().searchLimit());
    }

    /** Whether every layout that holds in the second model holds in the first, with the same rows of gateways. */
    private static boolean allowsNoMore(LayoutModel before, LayoutModel after) {
        return before.axes().equals(after.axes())
                && sameButPrices(before, after)
                && Arrays.equals(before.room(), after.room())
                && Arrays.equals(before.portRate(), after.portRate())
                && before.separations().alike(after.separations())
                && before.gatewayLimit() == after.gatewayLimit()
                && reachesNoFarther(before.host(), after.host())
                && reachesNoFarther(before.trunk(), after.trunk())
                && reachesNoFarther(before.spur(), after.spur());
    }

    private static boolean sameButPrices(LayoutModel before, LayoutModel after) {
        if (before.types().size() != after.types().size()) {
            return false;
        }
        for (int type = 0; type < before.types().size(); type++) {
            long more =
                    after.types().get(type).price() - before.types().get(type).price();
            if (!before.types().get(type).dearer(more).equals(after.types().get(type))) {
                return false;
            }
        }
        return true;
    }

    private static boolean reachesNoFarther(LinkTable before, LinkTable after) {
        for (int from = 0; from < after.cost().length; from++) {
            for (int to = 0; to < after.cost()[from].length; to++) {
                if (after.reaches(from, to) && !before.reaches(from, to)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean holds(LayoutModel model, Layout layout) {
        return model.within(layout) != null && layout.trunks.stream().allMatch(trunk -> LayoutRules.hold(model, trunk));
    }

    /** Whether no spur, link or gateway the layout could have instead gains on those it has. */
    private static boolean favoursNoOther(LayoutModel before, LayoutModel after, Layout layout) {
        Node[] nodes = layout.nodeOfAxis(after.axes().size());
        for (int axis = 0; axis < nodes.length; axis++) {
            Score own = more(before.spur(), after.spur(), axis, nodes[axis].place);
            for (int place = 0; place < after.places(); place++) {
                if (after.spur().reaches(axis, place)
                        && more(before.spur(), after.spur(), axis, place).betterThan(own)) {
                    return false;
                }
            }
        }
        return noneCheaper(before, after) && usedAsBefore(before, after, layout);
    }

    /** Links and gateways a layout may have or not must not become cheaper, or it may be better to have more of them. */
    private static boolean noneCheaper(LayoutModel before, LayoutModel after) {
        for (int type = 0; type < after.types().size(); type++) {
            if (after.types().get(type).price() < before.types().get(type).price()) {
                return false;
            }
        }
        return noneCheaper(before.host(), after.host()) && noneCheaper(before.trunk(), after.trunk());
    }

    private static boolean noneCheaper(LinkTable before, LinkTable after) {
        for (int from = 0; from < after.cost().length; from++) {
            for (int to = 0; to < after.cost()[from].length; to++) {
                if (after.reaches(from, to) && more(before, after, from, to).betterThan(Score.ZERO)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** And those it has must cost what they cost, or it may be better to have fewer. */
    private static boolean usedAsBefore(LayoutModel before, LayoutModel after, Layout layout) {
        for (Trunk trunk : layout.trunks) {
            Node last = null;
            for (Node node : trunk.chain) {
                LinkTable first = last == null ? before.host() : before.trunk();
                LinkTable second = last == null ? after.host() : after.trunk();
                if (!before.types().get(node.type).equals(after.types().get(node.type))
                        || !more(first, second, last == null ? 0 : last.place, node.place)
                                .equals(Score.ZERO)) {
                    return false;
                }
                last = node;
            }
        }
        return true;
    }

    private static Score more(LinkTable before, LinkTable after, int from, int to) {
        return new Score(
                after.cost()[from][to] - before.cost()[from][to], after.length()[from][to] - before.length()[from][to]);
    }
}
