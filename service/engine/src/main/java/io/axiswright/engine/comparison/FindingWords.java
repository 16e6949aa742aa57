package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Findings that appeared, vanished or changed, in words. */
final class FindingWords {

    private FindingWords() {}

    /** What became of a finding; at least one of the two is there. */
    static String of(@Nullable Finding before, @Nullable Finding after) {
        if (before == null) {
            return "new " + named(Objects.requireNonNull(after)) + ": " + text(after);
        }
        String was = named(before);
        if (after == null) {
            return "the " + was + " is gone: " + text(before);
        }
        if (before.severity() != after.severity()) {
            return "the " + was + " is a " + word(after) + " now: " + text(after);
        }
        return text(before).equals(text(after))
                ? "the " + was + " has another clause or remedy now: " + after.clause() + "; "
                        + after.remedy().replaceFirst("\\.$", "")
                : "the " + was + " says now: " + text(after) + "; it said: " + text(before);
    }

    private static String named(Finding finding) {
        return word(finding) + " " + finding.code().code() + " on " + finding.subject();
    }

    private static String word(Finding finding) {
        return finding.severity().name().toLowerCase(Locale.ROOT);
    }

    private static String text(Finding finding) {
        return finding.text().replaceFirst("\\.$", "");
    }
}
