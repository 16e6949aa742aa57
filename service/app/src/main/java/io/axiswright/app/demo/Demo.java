package io.axiswright.app.demo;

import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.Design;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.core.io.ClassPathResource;

/** The demonstration's documents. Machine, items, prices and ratings are all invented. */
public final class Demo {

    private Demo() {}

    /** The catalogue. */
    public static Catalogue catalogue() {
        return RecordReader.read(bytes("catalogue.json"), Catalogue.class);
    }

    /** The design: a pane packing cell of 15 axes. */
    public static Design design() {
        return RecordReader.read(bytes("design.json"), Design.class);
    }

    /** The design's document as written. */
    static byte[] bytes(String name) {
        try {
            return new ClassPathResource("demo/" + name).getContentAsByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
