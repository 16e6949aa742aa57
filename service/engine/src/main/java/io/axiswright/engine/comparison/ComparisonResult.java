package io.axiswright.engine.comparison;

import java.util.List;
import java.util.SequencedMap;

/**
 * Two studies side by side; every difference is second minus first.
 *
 * @param renames parts that only stand under another id; the first study is made anew with the ids of the second, and everything
 *     else here speaks in those
 * @param changes what the caller changed
 * @param counts how many consequences each discipline has
 * @param consequences what followed, by discipline
 * @param notExamined ids of changes whose part could not be told by themselves, because the design without or with only
 *     them has no meaning, or because the budget of studies was used up
 * @param studies how many studies were made to find the causes
 */
public record ComparisonResult(
        List<Rename> renames,
        List<InputChange> changes,
        SequencedMap<String, Integer> counts,
        List<Consequence> consequences,
        List<String> notExamined,
        int studies) {}
