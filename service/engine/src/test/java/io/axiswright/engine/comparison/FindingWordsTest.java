package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.Severity;
import org.junit.jupiter.api.Test;

class FindingWordsTest {

    private static final Finding FINDING = new Finding(
            FindingCode.DUTY_BRAKE_WEAK,
            Severity.VIOLATION,
            "lift",
            "The brake is weak.",
            "",
            "clause 1",
            null,
            null,
            "Take another brake.");

    @Test
    void whatBecameOfAFindingIsSaid() {
        String named = "violation " + FINDING.code().code() + " on lift";
        assertThat(FindingWords.of(null, FINDING)).isEqualTo("new " + named + ": The brake is weak");
        assertThat(FindingWords.of(FINDING, null)).isEqualTo("the " + named + " is gone: The brake is weak");
        assertThat(FindingWords.of(FINDING, Copies.with(FINDING, "text", "The brake is weaker.")))
                .isEqualTo("the " + named + " says now: The brake is weaker; it said: The brake is weak");
        assertThat(FindingWords.of(FINDING, Copies.with(FINDING, "severity", Severity.NOTE)))
                .isEqualTo("the " + named + " is a note now: The brake is weak");
        assertThat(FindingWords.of(FINDING, Copies.with(FINDING, "remedy", "Take two.")))
                .isEqualTo("the " + named + " has another clause or remedy now: clause 1; Take two");
    }
}
