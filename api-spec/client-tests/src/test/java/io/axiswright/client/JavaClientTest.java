package io.axiswright.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.axiswright.client.generated.ApiClient;
import io.axiswright.client.generated.ApiException;
import io.axiswright.client.generated.api.CataloguesApi;
import io.axiswright.client.generated.api.ComparisonsApi;
import io.axiswright.client.generated.api.ProjectsApi;
import io.axiswright.client.generated.api.RevisionsApi;
import io.axiswright.client.generated.api.SizingApi;
import io.axiswright.client.generated.model.Catalogue;
import io.axiswright.client.generated.model.InputChange;
import io.axiswright.client.generated.model.NewProject;
import io.axiswright.client.generated.model.NewRevision;
import io.axiswright.client.generated.model.SizingRequest;
import java.io.IOException;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The Java client, with typed requests and answers throughout. */
class JavaClientTest extends ClientTest {

    private static final ObjectMapper JSON = ApiClient.createDefaultObjectMapper();

    private ApiClient client() {
        var client = new ApiClient();
        client.updateBaseUri(address());
        return client;
    }

    private static <T> T typed(String example, Class<T> type) throws IOException {
        return JSON.readValue(example(example), type);
    }

    @Test
    void sizesASystem() throws Exception {
        var request = typed("SizingRequest.request.label-applicator", SizingRequest.class);

        var result = new SizingApi(client()).sizeSystem(request);

        assertThat(result.getBuildable()).isTrue();
        assertThat(result.getDuty().getAxes())
                .extracting("axis")
                .containsExactlyElementsOf(request.getDesign().getAxes().stream()
                        .map(axis -> axis.getId())
                        .toList());
        var lift = result.getDuty().getAxes().stream()
                .filter(axis -> axis.getAxis().equals("tamp-lift"))
                .findFirst()
                .orElseThrow();
        // 250 + 60 + 250 + 40 ms
        assertThat(lift.getFigures().getCyclePeriod().getValue()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void keepsTwoRevisionsAndComparesThem() throws Exception {
        UUID project = project();
        var revisions = new RevisionsApi(client());
        var first = typed("addRevision.request.first-state", NewRevision.class);
        var second = typed("addRevision.request.heavier-pad-and-faster-stroke", NewRevision.class);
        var added = revisions.addRevision(project, first, null, "*", "\"first\"");
        assertThat(revisions.addRevision(project, first, null, "*", "\"first\"").getNumber())
                .as("sent again under the same key")
                .isEqualTo(added.getNumber());
        revisions.addRevision(project, second, null, added.getEtag(), null);

        var comparison = new ComparisonsApi(client())
                .compareRevisions(project, 1, 2, null, null, null)
                .getComparison();

        // the three members that differ between the two requests
        assertThat(comparison.getChanges())
                .extracting(InputChange::getPath)
                .containsExactly(
                        "/design/axes/tamp-lift/mechanism/load",
                        "/design/axes/tamp-lift/cycle/segments/0/duration",
                        "/design/axes/tamp-lift/cycle/segments/2/duration");
        var period = comparison.getConsequences().stream()
                .filter(consequence -> consequence.getPath().equals("/duty/axes/tamp-lift/figures/cyclePeriod"))
                .findFirst()
                .orElseThrow();
        // both moves take 200 ms for 250 ms
        assertThat(period.getDifference().getTime().getValue()).isCloseTo(-0.1, within(1e-9));
        assertThat(period.getTogether()).containsExactly("change-2", "change-3");
        var stored = revisions.getRevision(project, 1, null);
        assertThat(JSON.<JsonNode>valueToTree(stored).at("/design/name"))
                .isEqualTo(JSON.readTree(example("addRevision.request.first-state"))
                        .at("/design/name"));
    }

    @Test
    void tellsARefusalByItsStatus() throws Exception {
        UUID project = project();
        var revision = typed("addRevision.request.first-state", NewRevision.class);

        assertThatThrownBy(() -> new RevisionsApi(client()).addRevision(project, revision, null, "\"stale\"", null))
                .isInstanceOfSatisfying(
                        ApiException.class,
                        refused -> assertThat(refused.getCode()).isEqualTo(412));
    }

    private UUID project() throws Exception {
        new CataloguesApi(client()).storeCatalogue(typed("Catalogue.request.bench-list", Catalogue.class), null);
        return new ProjectsApi(client())
                .openProject(new NewProject().name("Java " + UUID.randomUUID()), null)
                .getId();
    }
}
