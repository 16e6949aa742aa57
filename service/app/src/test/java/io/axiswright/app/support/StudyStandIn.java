package io.axiswright.app.support;

import io.axiswright.app.project.RevisionStudy;
import io.axiswright.app.project.StudyOutcome;
import java.util.Map;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.context.annotation.Bean;

/** Stands in for the engine's study where a test is about storing, not about sizing. */
@AutoConfiguration
public class StudyStandIn {

    /** Counts axes; a design is buildable if it has any. */
    @Bean
    @ConditionalOnMissingBean
    public RevisionStudy countsAxes() {
        return (codeBasis, catalogue, design) -> new StudyOutcome(
                "stand-in",
                !design.axes().isEmpty(),
                Map.of("axes", design.axes().size()));
    }
}
