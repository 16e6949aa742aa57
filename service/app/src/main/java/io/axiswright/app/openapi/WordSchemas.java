package io.axiswright.app.openapi;

import io.axiswright.app.wire.Shape;
import io.axiswright.engine.finding.FindingCode;
import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** The schemas of closed lists of words. */
final class WordSchemas {

    private WordSchemas() {}

    /** The list, with the meaning of each word. Finding codes are described at their own address: new ones may come. */
    static Schema<Object> of(Shape.Word word) {
        if (word.type() == FindingCode.class) {
            Schema<Object> code = Schemas.ofType("string");
            code.setDescription(
                    "A code of the catalogue of findings, described at /v1/findings/{code}; more may come.");
            code.setPattern("^[A-Z0-9]+(-[A-Z0-9]+)+$");
            code.setExamples(List.of(FindingCode.values()[0].code()));
            return code;
        }
        Schema<Object> schema = Schemas.words(List.copyOf(word.words().keySet()));
        String what = Words.of(word.type());
        String meanings = word.words().entrySet().stream()
                .map(entry -> meaning(word.type(), entry.getKey(), (Enum<?>) entry.getValue()))
                .collect(Collectors.joining(" "));
        schema.setDescription((Objects.requireNonNullElse(what, "") + " " + meanings).strip());
        return schema;
    }

    private static String meaning(Class<?> type, String word, Enum<?> constant) {
        String meaning = Words.ofConstant(type, constant.name());
        return meaning == null ? word + "." : word + ": " + meaning;
    }
}
