package io.axiswright.engine.comparison;

import java.util.List;
import java.util.Locale;

/**
 * A part of one design in whose place two of the other stand. Two axes stand for one if masses or moments of inertia of the one are
 * shared out between them (their sum is it to within a hundredth) and at most a tenth of what else they state, but for description
 * and position, is not as it states it. Two stop zones, places or host ports stand for one if all that referred to it
 * refers to one of the two, each is referred to, and by nothing that referred to another before. Where several pairs could stand for
 * one, none does. Backwards a split is a merge.
 *
 * @param what which kind of part
 * @param whole id of the one
 * @param parts ids of the two, in the order of their design
 * @param identifiedBy what tells it
 * @param text the same in a sentence
 */
public record Division(NamedPart what, String whole, List<String> parts, List<String> identifiedBy, String text) {

    /** One part of the first design that became two of the second. */
    static Division split(NamedPart what, Sharing sharing) {
        String one = what.called(sharing.whole());
        return of(what, sharing, one + " was split into " + both(what, sharing));
    }

    /** Two parts of the first design that became one of the second. */
    static Division merge(NamedPart what, Sharing sharing) {
        String one = what.called(sharing.whole());
        return of(what, sharing, both(what, sharing) + " were merged into " + one);
    }

    private static Division of(NamedPart what, Sharing sharing, String sentence) {
        String text = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1) + ": "
                + String.join("; ", sharing.identifiedBy()) + ".";
        return new Division(what, sharing.whole(), sharing.parts(), sharing.identifiedBy(), text);
    }

    private static String both(NamedPart what, Sharing sharing) {
        return what.called(sharing.parts().getFirst())
                + " and "
                + what.called(sharing.parts().getLast());
    }
}
