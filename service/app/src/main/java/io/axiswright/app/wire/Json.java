package io.axiswright.app.wire;

import java.util.List;

/** A JSON document as it was sent: members in order and not yet merged, numbers as written. */
sealed interface Json {

    /** An object; the same name may stand twice. */
    record JsonObject(List<Member> members) implements Json {}

    /** A name and its value. */
    record Member(String name, Json value) {}

    /** An array. */
    record JsonArray(List<Json> elements) implements Json {}

    /** A string. */
    record JsonText(String value) implements Json {}

    /** A number as written. */
    record JsonNumber(String literal) implements Json {}

    /** A truth value. */
    record JsonTruth(boolean value) implements Json {}

    /** The null literal. */
    record JsonNull() implements Json {}

    /** The value in words, for messages: "the string \"12\"", "an array". */
    default String inWords() {
        return switch (this) {
            case JsonObject _ -> "an object";
            case JsonArray _ -> "an array";
            case JsonText text -> "the string " + Excerpt.quoted(text.value());
            case JsonNumber number -> "the number " + Excerpt.of(number.literal());
            case JsonTruth truth -> "the truth value " + truth.value();
            case JsonNull _ -> "null";
        };
    }
}
