package io.axiswright.engine.comparison;

import org.jspecify.annotations.Nullable;

/**
 * What one change does: where taking it back leaves the first or the second result, where putting it in brings the second.
 *
 * @param change its place among the changes
 * @param takenBackToBefore where the second design without it is unlike the first result
 * @param takenBackToAfter where the second design without it is unlike the second result
 * @param putInToAfter where the first design with only it is unlike the second result
 */
record Trial(int change, Unlike takenBackToBefore, Unlike takenBackToAfter, Unlike putInToAfter) {

    /** What it does at a place of the result; null if nothing. */
    @Nullable
    Role role(String place) {
        boolean undone = !takenBackToBefore.at(place);
        boolean brought = !putInToAfter.at(place);
        if (undone) {
            return brought ? Role.NECESSARY_AND_SUFFICIENT : Role.NECESSARY;
        }
        if (brought) {
            return Role.SUFFICIENT;
        }
        return takenBackToAfter.at(place) ? Role.CONTRIBUTING : null;
    }
}
