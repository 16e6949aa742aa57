package io.axiswright.engine.comparison;

import java.util.List;
import java.util.SequencedMap;

/**
 * Two studies side by side; every difference is second minus first.
 *
 * @param renames parts that only stand under another id; the first study is made anew with the ids of the second, in whose order
 *     it counts and takes one of equals, and everything else here speaks in those
 * @param splits parts of the first design that became two; among the changes they still stand as one that went and two that came
 * @param merges two parts of the first design each that became one; among the changes they still stand as two that went and one
 *     that came
 * @param renumbered circuits and gateways of the first result that have another number in the second, by their numbers in the
 *     first: a circuit is the same that feeds the same loads, or most of them, a gateway that has the same axes, or most of
 *     them. Everything else here speaks in the numbers of the second
 * @param changes what the caller changed
 * @param groups changes that are the same one at ten places or more, and are tried as one
 * @param summary what is different at a first look
 * @param counts how many consequences each discipline has
 * @param consequences what followed, by discipline
 * @param notExamined what could not be told. Ids of changes and groups: the design without or with only them has no meaning, so
 *     that only the other of the two and trials of several tell of them, or the budget of studies was used up; of the changes of
 *     a group the group itself says whether each was tried. Paths of consequences, which begin with a slash: the budget was used up
 *     before it was known which changes bring them together, or whether all of those are needed
 * @param studies how many studies were made to find the causes
 */
public record ComparisonResult(
        List<Rename> renames,
        List<Division> splits,
        List<Division> merges,
        SequencedMap<String, String> renumbered,
        List<InputChange> changes,
        List<ChangeGroup> groups,
        ComparisonSummary summary,
        SequencedMap<String, Integer> counts,
        List<Consequence> consequences,
        List<String> notExamined,
        int studies) {

    /** The same with some of its consequences. */
    public ComparisonResult with(List<Consequence> some) {
        return new ComparisonResult(
                renames, splits, merges, renumbered, changes, groups, summary, counts, some, notExamined, studies);
    }
}
