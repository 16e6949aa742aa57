package io.axiswright.app.project;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Holds the history of a project against what its writers were told, knowing nothing of how the service works: only the
 * promises it makes.
 */
final class HistoryChecker {

    /** How a request ended for its writer. */
    enum End {
        /** 201. */
        STORED,
        /** 412 or 428. */
        REFUSED,
        /** No answer came. */
        UNKNOWN
    }

    /**
     * What a writer asked for and was told; every request carries a message of its own.
     *
     * @param ifMatch the state it named; null for none
     * @param number the number it was told; 0 if none
     */
    record Told(
            String message,
            @Nullable String ifMatch,
            End end,
            int number,
            @Nullable String etag) {}

    /** A revision of the history. */
    record Kept(int number, @Nullable Integer parent, String message, String etag) {}

    private HistoryChecker() {}

    /** Every broken promise, in words. */
    static List<String> faults(List<Told> told, List<Kept> history) {
        var faults = new ArrayList<String>();
        Map<String, Kept> byMessage = new HashMap<>();
        Map<Integer, Kept> byNumber = new HashMap<>();
        for (Kept kept : history) {
            if (byMessage.put(kept.message(), kept) != null) {
                faults.add("twice: " + kept.message());
            }
            byNumber.put(kept.number(), kept);
        }
        for (int number = 1; number <= history.size(); number++) {
            Kept kept = byNumber.get(number);
            if (kept == null) {
                faults.add("gap: " + number);
            } else if (number > 1 && !Integer.valueOf(number - 1).equals(kept.parent())) {
                faults.add("not after its predecessor: " + kept);
            }
        }
        Map<String, Told> asked = new HashMap<>();
        for (Told one : told) {
            asked.put(one.message(), one);
            Kept kept = byMessage.get(one.message());
            switch (one.end()) {
                case STORED -> {
                    if (kept == null
                            || kept.number() != one.number()
                            || !kept.etag().equals(one.etag())) {
                        faults.add("acknowledged, but not kept so: " + one);
                    }
                }
                case REFUSED -> {
                    if (kept != null) {
                        faults.add("refused, but kept: " + one);
                    }
                }
                case UNKNOWN -> {
                    // either is allowed
                }
            }
        }
        for (Kept kept : history) {
            Told one = asked.get(kept.message());
            Kept parent = kept.parent() == null ? null : byNumber.get(kept.parent());
            if (one == null) {
                faults.add("nobody asked for: " + kept);
            } else if (one.ifMatch() == null
                    || parent != null
                            && !one.ifMatch().equals("*")
                            && !one.ifMatch().equals(parent.etag())) {
                faults.add("not on the state that was named: " + kept);
            }
        }
        return faults;
    }
}
