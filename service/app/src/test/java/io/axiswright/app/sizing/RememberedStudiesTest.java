package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.sizing.Damages.Damaged;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever was studied before, a study that remembers it gives the very answer of one that does not: nothing that an answer follows
 * from is missing in the question it is remembered by.
 */
class RememberedStudiesTest {

    private final SystemStudy plain = SystemStudy.with(LayoutEffort.HEURISTIC);

    @Test
    void whateverIsWrongWithTheRequest() {
        SystemStudy remembering = plain.remembering();
        Damages.of("IEC_60204_1").forEach(damaged -> same(damaged, remembering));
    }

    @Test
    @Tag("slow")
    void whateverNumberIsScaledAndUnderAnotherCode() {
        SystemStudy remembering = plain.remembering();
        Damages.of("NFPA_79").forEach(damaged -> same(damaged, remembering));
        Damages.scaled("IEC_60204_1").forEach(damaged -> same(damaged, remembering));
    }

    private void same(Damaged damaged, SystemStudy remembering) {
        assertThat(answer(damaged, remembering)).as(damaged.what()).isEqualTo(answer(damaged, plain));
    }

    /** The result as it is sent, every digit of it, or the faults of a request that has none. */
    private static Object answer(Damaged damaged, SystemStudy study) {
        try {
            var request = RecordReader.read(damaged.body(), SizingRequest.class);
            var asked = new StudyRequest(
                    request.codeBasis(), Objects.requireNonNull(request.inlineCatalogue()), request.design());
            return new String(RecordWriter.write(study.system(asked)), StandardCharsets.UTF_8);
        } catch (InvalidDesign e) {
            return List.copyOf(e.faults());
        }
    }
}
