package io.axiswright.engine.comparison;

import java.util.List;

/** What became of a list whose elements have no names, in words: where something came, went or was put in its place. */
final class ListWords {

    private ListWords() {}

    /** The shortest stretch that is not the same, counted from 1. */
    static String of(List<?> before, List<?> after) {
        int shorter = Math.min(before.size(), after.size());
        int front = 0;
        while (front < shorter && before.get(front).equals(after.get(front))) {
            front++;
        }
        int back = 0;
        while (back < shorter - front
                && before.get(before.size() - 1 - back).equals(after.get(after.size() - 1 - back))) {
            back++;
        }
        int went = before.size() - front - back;
        int came = after.size() - front - back;
        String where = front == 0 ? "at the front" : "after the first " + front;
        if (went == 0) {
            return came + " came " + where;
        }
        return came == 0 ? went + " went " + where : came + " came for " + went + " " + where;
    }
}
