package io.axiswright.app.idempotency;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IdempotencyKeyTest {

    /** The example of draft-ietf-httpapi-idempotency-key-header-07, section 2.1. */
    @Test
    void readsAString() {
        assertThat(IdempotencyKey.valueOf("\"8e03978e-40d5-43e8-bc93-6894a57f9324\"")
                        .value())
                .isEqualTo("8e03978e-40d5-43e8-bc93-6894a57f9324");
    }

    /** RFC 9651, 3.3.3: only quotation mark and backslash are escaped. */
    @Test
    void readsEscapes() {
        assertThat(IdempotencyKey.valueOf("\"a \\\"b\\\" \\\\c\"").value()).isEqualTo("a \"b\" \\c");
    }

    @Test
    void takesAKeyWithoutItsQuotes() {
        assertThat(IdempotencyKey.valueOf("order-4711")).isEqualTo(IdempotencyKey.valueOf("\"order-4711\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\"\"",
                "\"open",
                "\"a\"b\"",
                "\"\\n\"",
                "\"\t\"",
                "\"é\"",
                "two words",
                "\"a\", \"b\"",
                "\"a\";b=1"
            })
    void refusesWhatIsNoString(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> IdempotencyKey.valueOf(text));
    }

    @Test
    void refusesAKeyThatIsTooLong() {
        IdempotencyKey.valueOf("k".repeat(200));
        assertThatIllegalArgumentException().isThrownBy(() -> IdempotencyKey.valueOf("k".repeat(201)));
    }
}
