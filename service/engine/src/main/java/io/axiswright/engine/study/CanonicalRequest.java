package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.graph.Arrangement;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A request whose lists stand in one order of their own wherever order means nothing, so that nothing can follow from the order in
 * which its sender lists axes, places or items: every choice between equals, every sum and every count is made in this one. What is
 * worked out from it is told as of the request that was sent.
 */
final class CanonicalRequest {

    private static final String DESIGN = "/design";
    private static final String CATALOGUE = CatalogueSource.SENT.pointer("");

    private final StudyRequest sent;
    private final Arrangement<Design> design;
    private final Arrangement<Catalogue> catalogue;

    private CanonicalRequest(StudyRequest sent) {
        this.sent = sent;
        this.design = Arrangement.of(sent.design());
        this.catalogue = Arrangement.of(sent.catalogue());
    }

    static CanonicalRequest of(StudyRequest sent) {
        return new CanonicalRequest(sent);
    }

    /** The request to work with. */
    StudyRequest value() {
        return new StudyRequest(
                sent.codeBasis(), catalogue.value(), design.value(), sent.catalogueSource(), sent.timeCourses());
    }

    /** An answer to it, as one to the request that was sent. */
    <T> T asSent(T answer) {
        return design.isAsBefore() && catalogue.isAsBefore()
                ? answer
                : new Retelling(this::pointer, design.isAsBefore() ? Map.of() : callersOrder()).of(answer);
    }

    /** Its faults, as those of the request that was sent. */
    InvalidDesign asSent(InvalidDesign refused) {
        return new InvalidDesign(
                refused.faults().stream()
                        .map(fault -> fault.at(pointer(fault.pointer())))
                        .toList(),
                refused.omitted());
    }

    private String pointer(String here) {
        if (here.startsWith(DESIGN)) {
            return DESIGN + design.before(here.substring(DESIGN.length()));
        }
        return here.startsWith(CATALOGUE) ? CATALOGUE + catalogue.before(here.substring(CATALOGUE.length())) : here;
    }

    private Map<CallersList, Map<String, Integer>> callersOrder() {
        Map<CallersList, Map<String, Integer>> order = new EnumMap<>(CallersList.class);
        for (CallersList list : CallersList.values()) {
            List<String> ids = list.ids(sent.design());
            if (!ids.equals(list.ids(design.value()))) {
                Map<String, Integer> places = HashMap.newHashMap(ids.size());
                ids.forEach(id -> places.putIfAbsent(id, places.size()));
                order.put(list, places);
            }
        }
        return order;
    }
}
