package io.axiswright.app.project;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.SearchGate;
import org.springframework.stereotype.Component;

/** Studies a revision as the sizing endpoint would: the whole system, with a proven layout. */
@Component
class SystemRevisionStudy implements RevisionStudy {

    private final SystemStudy study;

    SystemRevisionStudy(SearchGate gate) {
        this.study = SystemStudy.proving(gate);
    }

    @Override
    public StudyOutcome study(CodeBasis codeBasis, Catalogue catalogue, Design design) {
        StudyResult result = study.system(new StudyRequest(codeBasis, catalogue, design, CatalogueSource.STORED));
        return new StudyOutcome(result.engineVersion(), result.buildable(), result);
    }
}
