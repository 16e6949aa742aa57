package io.axiswright.app.openapi;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.Design;
import org.junit.jupiter.api.Test;

class SchemaNamesTest {

    record Left() {
        record SameNameInTwoPlaces() {}
    }

    record Right() {
        record SameNameInTwoPlaces() {}
    }

    @Test
    void aSimpleNameServesWhereItIsTheOnlyOne() {
        var names = new SchemaNames();
        assertThat(names.name(Design.class)).isEqualTo("Design");
        assertThat(names.name(Left.class)).isEqualTo("Left");
        assertThat(names.name(Left.SameNameInTwoPlaces.class))
                .isEqualTo("OpenapiSchemaNamesTestLeftSameNameInTwoPlaces");
        assertThat(names.name(Right.SameNameInTwoPlaces.class))
                .isEqualTo("OpenapiSchemaNamesTestRightSameNameInTwoPlaces");
        assertThat(names.type("#/components/schemas/Design")).isEqualTo(Design.class);
    }
}
