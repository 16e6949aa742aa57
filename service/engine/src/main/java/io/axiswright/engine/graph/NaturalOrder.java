package io.axiswright.engine.graph;

import java.util.Comparator;

/** The order in which people expect names to stand: numbers in them by value, so that {@code axis-2} comes before {@code axis-10}. */
public final class NaturalOrder {

    /** The order of names. */
    public static final Comparator<String> OF_NAMES = NaturalOrder::compare;

    private NaturalOrder() {}

    /** Less than 0 if the first name comes before the second, more if it comes after; 0 only for the same name. */
    static int compare(String one, String other) {
        int i = 0;
        int j = 0;
        while (i < one.length() && j < other.length()) {
            if (isDigit(one.charAt(i)) && isDigit(other.charAt(j))) {
                int endOne = endOfNumber(one, i);
                int endOther = endOfNumber(other, j);
                int order = numbers(one, i, endOne, other, j, endOther);
                if (order != 0) {
                    return order;
                }
                i = endOne;
                j = endOther;
            } else if (one.charAt(i) != other.charAt(j)) {
                return Character.compare(one.charAt(i), other.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        int rest = Integer.compare(one.length() - i, other.length() - j);
        // only zeros before numbers can differ now
        return rest != 0 ? rest : one.compareTo(other);
    }

    private static int numbers(String one, int i, int endOne, String other, int j, int endOther) {
        int from = firstThatCounts(one, i, endOne);
        int fromOther = firstThatCounts(other, j, endOther);
        int longer = Integer.compare(endOne - from, endOther - fromOther);
        return longer != 0 ? longer : one.substring(from, endOne).compareTo(other.substring(fromOther, endOther));
    }

    private static int firstThatCounts(String text, int start, int end) {
        int k = start;
        while (k < end && text.charAt(k) == '0') {
            k++;
        }
        return k;
    }

    private static int endOfNumber(String text, int start) {
        int end = start;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
