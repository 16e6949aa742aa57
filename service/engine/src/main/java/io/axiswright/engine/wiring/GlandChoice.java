package io.axiswright.engine.wiring;

import io.axiswright.engine.catalogue.CableEnd;
import io.axiswright.engine.catalogue.CableEndKind;
import io.axiswright.engine.catalogue.CableGland;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Picks the gland of every cable at every enclosure it enters. A cable is drawn through all walls, and the conduits between them, by its
 * narrower end, so that end decides: the cheapest gland that holds the cable and passes the end; where none does, the cheapest that
 * holds the cable, and the end is cut off and made anew, as it is where a conduit is too narrow for it. Connectors that are made on the machine anyway are collected on the way.
 */
final class GlandChoice {

    private final WiringRequest request;
    private final List<WiringPart> parts = new ArrayList<>();
    private final List<CableEntry> entries = new ArrayList<>();
    private final List<FieldEnd> fieldEnds = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> told = new LinkedHashSet<>();

    GlandChoice(WiringRequest request, List<CableRun> runs) {
        this.request = request;
        runs.forEach(this::bringIn);
    }

    private void bringIn(CableRun run) {
        @Nullable
        CableEnd narrow = run.ends().stream()
                .min(Comparator.comparingDouble(GlandChoice::width))
                .orElse(null);
        @Nullable Length width = narrow == null || narrow.kind() != CableEndKind.MOULDED ? null : narrow.width();
        boolean passesAll = true;
        for (String enclosure : run.enclosures()) {
            passesAll &= enter(run, enclosure, width);
        }
        for (ConduitOnWay conduit : request.conduits().getOrDefault(run.asker(), List.of())) {
            passesAll &= passes(run, conduit, width);
        }
        run.ends().stream().filter(end -> end.kind() == CableEndKind.FIELD_MADE).forEach(end -> make(run, end, false));
        if (!passesAll) {
            make(run, leastWork(run.ends()), true);
        }
    }

    /** What has no width, or is bare, passes wherever the cable does. */
    private static double width(CableEnd end) {
        return end.kind() == CableEndKind.MOULDED && end.width() != null
                ? end.width().si()
                : 0;
    }

    /** Whether the end passes. */
    private boolean enter(CableRun run, String enclosure, @Nullable Length width) {
        List<CableGland> holding = request.glands().stream()
                .filter(gland -> gland.holds(run.outerDiameter()))
                .sorted(Cheapest.FIRST)
                .toList();
        Optional<CableGland> passing = holding.stream()
                .filter(gland -> width == null || gland.passes().si() >= width.si())
                .findFirst();
        Optional<CableGland> gland = passing.or(() -> holding.stream().findFirst());
        gland.ifPresentOrElse(
                g -> parts.add(new WiringPart(
                        g.id(),
                        run.asker(),
                        "brings cable " + run.item() + " into " + enclosure,
                        run.pointer(),
                        false)),
                () -> withoutGland(run));
        boolean passes = passing.isPresent() || gland.isEmpty();
        entries.add(new CableEntry(
                run.asker(), run.item(), enclosure, gland.map(CableGland::id).orElse(null), width, passes));
        if (!passes) {
            double largest =
                    holding.stream().mapToDouble(g -> g.passes().si()).max().orElse(0);
            tell(FindingCode.BILL_CABLE_END_TOO_WIDE.at(
                    run.item(), glandList(), "completeness", width, new Length(largest)));
        }
        return passes;
    }

    private boolean passes(CableRun run, ConduitOnWay conduit, @Nullable Length width) {
        if (width == null || width.si() <= conduit.innerDiameter().si()) {
            return true;
        }
        tell(FindingCode.BILL_CABLE_END_CONDUIT.at(
                run.item() + " on route " + conduit.route(),
                conduit.pointer(),
                "completeness",
                width,
                conduit.innerDiameter()));
        return false;
    }

    private void withoutGland(CableRun run) {
        tell(FindingCode.BILL_GLAND_NONE.at(run.item(), glandList(), "completeness", run.outerDiameter(), null));
    }

    private String glandList() {
        return request.source().list("cableGlands", request.glands());
    }

    /** Each thing is said once, however many cables of the kind there are. */
    private void tell(Finding finding) {
        if (told.add(finding.code() + " " + finding.subject())) {
            findings.add(finding);
        }
    }

    /** The end to make anew: one the catalogue has parts for, then one it has the tool for. */
    private static CableEnd leastWork(List<CableEnd> ends) {
        return ends.stream()
                .min(Comparator.comparing((CableEnd end) -> end.fieldParts() == null)
                        .thenComparing(end -> end.fieldTool() == null))
                .orElseThrow();
    }

    private void make(CableRun run, CableEnd end, boolean rework) {
        fieldEnds.add(
                new FieldEnd(run.asker(), run.item(), rework, end.fieldParts(), end.fieldTool(), end.fieldLabour()));
        String reason = rework
                ? "replaces an end of cable " + run.item() + " that does not pass its way"
                : "makes an end of cable " + run.item() + " on the machine";
        if (end.fieldParts() != null) {
            parts.add(new WiringPart(end.fieldParts(), run.asker(), reason, run.pointer(), false));
        } else {
            tell(FindingCode.BILL_CABLE_END_PARTS_NONE.at(run.item(), cablePointer(run), "completeness", null, null));
        }
        if (end.fieldTool() == null) {
            tell(FindingCode.BILL_CABLE_END_TOOL_NONE.at(
                    run.item(), cablePointer(run), "common practice, no source", null, null));
        } else if (told.add("tool " + end.fieldTool())) {
            parts.add(
                    new WiringPart(Objects.requireNonNull(end.fieldTool()), run.asker(), reason, run.pointer(), true));
        }
    }

    private String cablePointer(CableRun run) {
        for (int k = 0; k < request.cables().size(); k++) {
            if (request.cables().get(k).id().equals(run.item())) {
                return request.source().item("cableAssemblies", k);
            }
        }
        return run.pointer();
    }

    List<WiringPart> parts() {
        return parts;
    }

    List<CableEntry> entries() {
        return entries;
    }

    List<FieldEnd> fieldEnds() {
        return fieldEnds;
    }

    List<Finding> findings() {
        return findings;
    }
}
