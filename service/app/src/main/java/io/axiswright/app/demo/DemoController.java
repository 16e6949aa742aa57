package io.axiswright.app.demo;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBean;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Gives newcomers something to send. */
@RestController
@ConditionalOnBean(DemoCatalogue.class)
class DemoController {

    /**
     * A request for the sizing endpoints.
     *
     * @param codeBasis the electrical code to follow
     * @param catalogue the demo catalogue as stored here
     * @param design the demo design
     */
    record DemoRequest(CodeBasis codeBasis, CatalogueReference catalogue, Design design) {}

    private final DemoCatalogue catalogue;

    DemoController(DemoCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    @GetMapping("/v1/demo/request")
    DemoRequest getDemoRequest() {
        return new DemoRequest(CodeBasis.IEC_60204_1, catalogue.reference(), Demo.design());
    }
}
