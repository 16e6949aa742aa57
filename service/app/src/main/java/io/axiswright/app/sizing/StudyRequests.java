package io.axiswright.app.sizing;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Finds the catalogue a request names, or takes the one it brings, so that the engine gets all it needs. */
@Component
public class StudyRequests {

    private static final String ACCEPTED = "either \"catalogue\" with name and version, or \"inlineCatalogue\"";

    private final Catalogues catalogues;

    StudyRequests(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    /**
     * The engine's form of a request.
     *
     * @throws InvalidDesign if it names no catalogue, two, an unknown one, or brings one that contradicts itself
     */
    public StudyRequest of(SizingRequest request) {
        return new StudyRequest(
                request.codeBasis(),
                catalogue(request.catalogue(), request.inlineCatalogue()),
                request.design(),
                request.inlineCatalogue() == null ? CatalogueSource.STORED : CatalogueSource.SENT,
                request.timeCourses());
    }

    private Catalogue catalogue(@Nullable CatalogueReference reference, @Nullable Catalogue inline) {
        if (reference != null && inline == null) {
            return catalogues.require(reference, "/catalogue");
        }
        if (inline != null && reference == null) {
            List<Fault> faults = CatalogueCheck.faults(inline, "/inlineCatalogue");
            if (!faults.isEmpty()) {
                throw new InvalidDesign(faults);
            }
            return inline;
        }
        throw reference == null
                ? fault("/catalogue", FaultCode.MISSING, "the request names no catalogue to buy from")
                : fault("/inlineCatalogue", FaultCode.INCONSISTENT, "the request names two catalogues to buy from");
    }

    private static InvalidDesign fault(String pointer, FaultCode code, String detail) {
        return new InvalidDesign(List.of(new Fault(pointer, code, detail, ACCEPTED)));
    }
}
