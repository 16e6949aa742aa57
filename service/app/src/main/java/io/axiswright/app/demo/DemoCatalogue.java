package io.axiswright.app.demo;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.app.catalogues.Catalogues;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Stores the demo catalogue at start, unless told not to; a catalogue already there is left as it is. */
@Component
@Order(1)
@ConditionalOnProperty(name = "axiswright.demo.enabled", matchIfMissing = true)
class DemoCatalogue implements ApplicationRunner {

    private final Catalogues catalogues;
    private int version;

    DemoCatalogue(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        reference();
    }

    /** How to name it in a request; the first to ask stores it, for requests may come before the start has got this far. */
    synchronized CatalogueReference reference() {
        if (version == 0) {
            version =
                    catalogues.store(Demo.catalogue(), stored -> stored.entry().version());
        }
        return new CatalogueReference("demo", version);
    }
}
