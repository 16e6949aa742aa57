package io.axiswright.engine.topology;

/** The axes that gain most, those with a brake apart from those without; no more of either than any gateway takes. */
final class BestAxes {

    private final int[] plain;
    private final int[] braked;
    private int plainCount;
    private int brakedCount;

    BestAxes(int most) {
        plain = new int[most];
        braked = new int[most];
    }

    void clear() {
        plainCount = 0;
        brakedCount = 0;
    }

    boolean isEmpty() {
        return plainCount + brakedCount == 0;
    }

    /** Takes an axis in if it is one of the best so far; of equals the one offered first. */
    void offer(int axis, boolean brake, long[] reduced) {
        if (brake) {
            brakedCount = insert(braked, brakedCount, axis, reduced);
        } else {
            plainCount = insert(plain, plainCount, axis, reduced);
        }
    }

    private static int insert(int[] best, int count, int axis, long[] reduced) {
        int at = count;
        while (at > 0 && reduced[best[at - 1]] > reduced[axis]) {
            at--;
        }
        if (at == best.length) {
            return count;
        }
        int kept = Math.min(count, best.length - 1);
        System.arraycopy(best, at, best, at + 1, kept - at);
        best[at] = axis;
        return kept + 1;
    }

    /**
     * The best axes of two lists together for one gateway. Greedy is exact here: so many axes in all, so many of them with
     * brakes, is a laminar matroid.
     *
     * @param ports most axes in all
     * @param brakes most axes with a brake
     * @param taken where the axes go
     * @return how many they are
     */
    static int merge(BestAxes a, BestAxes b, int ports, int brakes, long[] reduced, int[] taken) {
        int plainA = 0;
        int plainB = 0;
        int brakedA = 0;
        int brakedB = 0;
        int count = 0;
        while (count < ports) {
            boolean brakeLeft = brakedA + brakedB < brakes;
            long atPlainA = plainA < a.plainCount ? reduced[a.plain[plainA]] : 0;
            long atPlainB = plainB < b.plainCount ? reduced[b.plain[plainB]] : 0;
            long atBrakedA = brakeLeft && brakedA < a.brakedCount ? reduced[a.braked[brakedA]] : 0;
            long atBrakedB = brakeLeft && brakedB < b.brakedCount ? reduced[b.braked[brakedB]] : 0;
            long least = Math.min(Math.min(atPlainA, atPlainB), Math.min(atBrakedA, atBrakedB));
            if (least >= 0) {
                break;
            }
            if (least == atPlainA) {
                taken[count++] = a.plain[plainA++];
            } else if (least == atPlainB) {
                taken[count++] = b.plain[plainB++];
            } else if (least == atBrakedA) {
                taken[count++] = a.braked[brakedA++];
            } else {
                taken[count++] = b.braked[brakedB++];
            }
        }
        return count;
    }
}
