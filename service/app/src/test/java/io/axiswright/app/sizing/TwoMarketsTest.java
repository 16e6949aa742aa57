package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.Pointers;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.study.CircuitAspect;
import io.axiswright.engine.study.MarketComparison;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The demonstration for Europe and, on its own mains and with its own cable, for North America, as a caller sends it. */
class TwoMarketsTest {

    private static ObjectNode body() {
        ObjectNode revision = Demo.revision("", "demo", 1);
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("codeBasis", "IEC_60204_1");
        body.set("inlineCatalogue", Demo.catalogue("demo"));
        body.set("design", revision.get("design"));
        ObjectNode other = body.putObject("otherMarket").put("codeBasis", "NFPA_79");
        other.set("mains", revision.at("/design/mains").deepCopy());
        ((ObjectNode) other.at("/mains/frequency")).put("value", 60);
        other.set("installation", revision.at("/design/installation").deepCopy());
        ((ObjectNode) other.get("installation")).put("insulation", "NEC_75");
        ObjectNode route =
                ((ObjectNode) other.get("installation")).putArray("cableRoutes").addObject();
        route.put("id", "main duct")
                .put("feeder", true)
                .putArray("axes")
                .add(revision.at("/design/axes/0/id").asString());
        route.putObject("containment")
                .put("kind", "STANDARD_CONDUIT")
                .put("type", "EMT")
                .put("metricDesignator", 16);
        return body;
    }

    @Test
    void bothMarketsAreAnsweredAndEveryPointerLeadsIntoTheBody() {
        ObjectNode body = body();
        var request = RecordReader.read(body, SizingRequest.class);
        StudyResult result = SystemStudy.with(LayoutEffort.HEURISTIC)
                .system(
                        new StudyRequest(
                                request.codeBasis(),
                                Objects.requireNonNull(request.inlineCatalogue()),
                                request.design()),
                        Objects.requireNonNull(request.otherMarket()));
        MarketComparison other = Objects.requireNonNull(result.otherMarket());
        assertThat(other.study().findings())
                .extracting(Finding::pointer)
                .allMatch(pointer -> Pointers.leadsToSomething(body, pointer))
                .anyMatch(pointer -> pointer.startsWith("/otherMarket/mains"))
                .contains("/otherMarket/installation/cableRoutes/0/containment");
        assertThat(other.circuits())
                .isNotEmpty()
                .anySatisfy(d -> assertThat(d.differing()).contains(CircuitAspect.CONDUCTOR));
        assertThat(JsonMapper.shared()
                        .readTree(RecordWriter.write(result))
                        .at("/otherMarket/study/codeBasis")
                        .asString())
                .isEqualTo("NFPA_79");
    }
}
