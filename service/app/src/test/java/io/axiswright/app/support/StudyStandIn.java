package io.axiswright.app.support;

import io.axiswright.app.project.RevisionStudy;
import io.axiswright.app.project.StudyOutcome;
import io.axiswright.app.wire.RandomRecords;
import io.axiswright.engine.design.DesignCheck;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyResult;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Stands in for the engine's study where a test is about storing, not about sizing. */
@TestConfiguration
public class StudyStandIn {

    /** Always the same result; a design is buildable if it has any axes. */
    @Bean
    @Primary
    public RevisionStudy sameForAll() {
        StudyResult result = new RandomRecords(1).next(StudyResult.class);
        return (codeBasis, catalogue, design) -> {
            var faults = DesignCheck.faults(design, "/design");
            if (!faults.isEmpty()) {
                throw new InvalidDesign(faults);
            }
            return new StudyOutcome("stand-in", !design.axes().isEmpty(), result);
        };
    }
}
