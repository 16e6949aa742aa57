package io.axiswright.app.support;

import io.axiswright.app.project.RevisionStudy;
import io.axiswright.app.project.StudyOutcome;
import java.util.Map;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Stands in for the engine's study where a test is about storing, not about sizing. */
@TestConfiguration
public class StudyStandIn {

    /** Counts axes; a design is buildable if it has any. */
    @Bean
    @Primary
    public RevisionStudy countsAxes() {
        return (codeBasis, catalogue, design) -> new StudyOutcome(
                "stand-in",
                !design.axes().isEmpty(),
                Map.of("axes", design.axes().size()));
    }
}
