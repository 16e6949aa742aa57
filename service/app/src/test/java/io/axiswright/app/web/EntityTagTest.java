package io.axiswright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.axiswright.app.problem.Failure;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.problem.ProblemKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 9110, 8.8.3 (entity-tag), 13.1.1 (If-Match, strong comparison) and 5.6.1 (lists). */
class EntityTagTest {

    private static final EntityTag TAG = new EntityTag("abc");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "*",
                " * ",
                "\"abc\"",
                "\"x\", \"abc\"",
                "\"x,\",W/\"y\" ,\t\"abc\"",
                ",\"abc\",,",
                "W/\"abc\", \"abc\""
            })
    void names(String ifMatch) {
        assertThatCode(() -> TAG.requireMatch(ifMatch)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"x\"", "\"\"", "W/\"abc\"", "\"ABC\"", "\"x\", W/\"abc\""})
    void namesAnother(String ifMatch) {
        assertThatExceptionOfType(PreconditionFailed.class).isThrownBy(() -> TAG.requireMatch(ifMatch));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "abc",
                "x\"abc\"y",
                "\"abc",
                "w/\"abc\"",
                "W/ \"abc\"",
                "\"abc\" \"x\"",
                "*, \"abc\"",
                "\"a c\"",
                "\"abc\";q=1"
            })
    void isNone(String ifMatch) {
        assertThatExceptionOfType(Failure.class)
                .isThrownBy(() -> TAG.requireMatch(ifMatch))
                .satisfies(e -> assertThat(e.kind()).isEqualTo(ProblemKind.INVALID_PARAMETER));
    }

    @Test
    void isNotThere() {
        assertThatExceptionOfType(PreconditionRequired.class).isThrownBy(() -> TAG.requireMatch(null));
    }
}
