package io.axiswright.engine.comparison;

import org.jspecify.annotations.Nullable;

/**
 * What one change does, or several put in and taken back as one: where taking it back leaves the first or the second result, where putting it in brings the second. A design
 * without meaning has no result to be held against those.
 *
 * @param change its place among what is tried
 * @param takenBackToBefore where the second design without it is unlike the first result; null if that design has no meaning
 * @param takenBackToAfter where the second design without it is unlike the second result; null if that design has no meaning
 * @param putInToAfter where the first design with only it is unlike the second result; null if that design has no meaning
 */
record Trial(
        int change,
        @Nullable Unlike takenBackToBefore,
        @Nullable Unlike takenBackToAfter,
        @Nullable Unlike putInToAfter) {

    /** What it does at a place of the result, as far as that is known; null if nothing is. */
    @Nullable
    Role role(String place) {
        boolean undone = takenBackToBefore != null && !takenBackToBefore.at(place);
        boolean brought = putInToAfter != null && !putInToAfter.at(place);
        if (undone) {
            return brought ? Role.NECESSARY_AND_SUFFICIENT : Role.NECESSARY;
        }
        if (brought) {
            return Role.SUFFICIENT;
        }
        return takenBackToAfter != null && takenBackToAfter.at(place) ? Role.CONTRIBUTING : null;
    }

    /** Whether the second design has a meaning without it. */
    boolean canBeTakenBack() {
        return takenBackToAfter != null;
    }

    /** Whether it could be both taken back and put in. */
    boolean isWhole() {
        return canBeTakenBack() && putInToAfter != null;
    }
}
