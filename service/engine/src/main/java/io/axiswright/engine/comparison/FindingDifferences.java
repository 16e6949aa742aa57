package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Findings that came, went or changed; a finding is the same one if its code and its subject
 * are: its pointer counts places in lists, and those move between revisions. */
final class FindingDifferences {

    private FindingDifferences() {}

    static List<Difference> between(List<Finding> before, List<Finding> after) {
        Map<String, Finding> first = keyed(before);
        Map<String, Finding> second = keyed(after);
        List<Difference> differences = new ArrayList<>();
        first.forEach((key, finding) -> {
            Finding other = second.get(key);
            if (other == null) {
                differences.add(new Difference(path(key), ChangeKind.REMOVED, finding, null));
            } else if (!same(finding, other)) {
                differences.add(new Difference(path(key), ChangeKind.CHANGED, finding, other));
            }
        });
        second.forEach((key, finding) -> {
            if (!first.containsKey(key)) {
                differences.add(new Difference(path(key), ChangeKind.ADDED, null, finding));
            }
        });
        return differences;
    }

    private static boolean same(Finding one, Finding other) {
        return Differences.same(one.value(), other.value())
                && Differences.same(one.limit(), other.limit())
                && one.severity() == other.severity()
                && one.text().equals(other.text())
                && one.clause().equals(other.clause())
                && one.remedy().equals(other.remedy());
    }

    private static Map<String, Finding> keyed(List<Finding> findings) {
        Map<String, Finding> result = new LinkedHashMap<>();
        for (Finding finding : findings) {
            // without slashes, so that the key stays readable inside a path
            String name = finding.code().code() + ":" + finding.subject().replace('/', '.');
            String key = name;
            for (int n = 2; result.putIfAbsent(key, finding) != null; n++) {
                key = name + "#" + n;
            }
        }
        return result;
    }

    private static List<Step> path(String key) {
        return List.of(new Step.Member("findings"), new Step.Element(key, 0));
    }
}
