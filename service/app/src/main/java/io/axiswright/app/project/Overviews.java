package io.axiswright.app.project;

import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads the figures of a revision off its stored document, member by member: an engine of another day may have had others. */
final class Overviews {

    private final JsonNode design;
    private final JsonNode result;

    private Overviews(JsonNode document) {
        design = document.path("design");
        result = document.path("result");
    }

    /** The overview of a stored revision. */
    static RevisionOverview of(UUID project, RevisionSummary revision, JsonNode document) {
        return new Overviews(document).of(project, revision);
    }

    private RevisionOverview of(UUID project, RevisionSummary revision) {
        return new RevisionOverview(
                project,
                design.path("name").asString(""),
                revision,
                design.path("axes").size(),
                design.path("stopZones").size(),
                driveUnits(),
                count("/topology/gateways"),
                count("/controlPower/supplies"),
                count("/braking/groups"),
                count("/supply/circuits"),
                new FindingCounts(findings(Severity.VIOLATION), findings(Severity.CAUTION), findings(Severity.NOTE)),
                bill());
    }

    private List<ItemCount> driveUnits() {
        Map<String, Integer> counts = result.at("/duty/axes")
                .valueStream()
                .map(axis -> axis.path("driveUnit"))
                .filter(JsonNode::isString)
                .collect(Collectors.toMap(JsonNode::asString, _ -> 1, Integer::sum, TreeMap::new));
        return counts.entrySet().stream()
                .map(entry -> new ItemCount(entry.getKey(), entry.getValue()))
                .toList();
    }

    private @Nullable Integer count(String pointer) {
        JsonNode list = result.at(pointer);
        return list.isArray() ? list.size() : null;
    }

    private int findings(Severity severity) {
        return (int) result.path("findings")
                .valueStream()
                .filter(finding ->
                        severity.name().equals(finding.path("severity").asString("")))
                .count();
    }

    private @Nullable BillFigures bill() {
        JsonNode bill = result.path("billOfMaterials");
        JsonNode required = bill.path("required");
        if (required.isMissingNode()) {
            return null;
        }
        return new BillFigures(
                required.path("lines").size(),
                RecordReader.read(required.required("total"), Money.class),
                total(bill.path("optional")),
                total(bill.path("spares")),
                bill.path("withoutPrice").size(),
                RecordReader.read(required.required("mass"), Mass.class));
    }

    private static @Nullable Money total(JsonNode section) {
        return section.has("total") ? RecordReader.read(section.get("total"), Money.class) : null;
    }
}
