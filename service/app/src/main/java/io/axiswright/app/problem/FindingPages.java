package io.axiswright.app.problem;

import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.Severity;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The catalogue of findings. */
@RestController
@Tag(name = "Findings", description = "The catalogue of findings.")
@RequestMapping("/v1/findings")
class FindingPages {

    /**
     * The catalogue of findings.
     *
     * @param items every finding a result may carry, discipline by discipline
     */
    record FindingPageList(List<FindingPage> items) {}

    /**
     * A finding that a result may carry.
     *
     * @param code its code; never changes its meaning
     * @param severity how much it matters
     * @param template its text, with {subject}, {value} and {limit} where a result fills them in
     * @param remedy what would fix it
     */
    record FindingPage(FindingCode code, Severity severity, String template, String remedy) {

        static FindingPage of(FindingCode code) {
            return new FindingPage(code, code.severity(), code.template(), code.remedy());
        }
    }

    /** Lists every finding a result may carry. */
    @GetMapping
    FindingPageList listFindings() {
        return new FindingPageList(
                Stream.of(FindingCode.values()).map(FindingPage::of).toList());
    }

    /**
     * Describes one finding.
     *
     * @param code its code, as DUTY-NO-DRIVE-UNIT
     */
    @GetMapping("/{code}")
    FindingPage describeFinding(@PathVariable String code) {
        return Stream.of(FindingCode.values())
                .filter(known -> known.code().equals(code))
                .map(FindingPage::of)
                .findFirst()
                .orElseThrow(() -> new NotFound("finding", code));
    }
}
