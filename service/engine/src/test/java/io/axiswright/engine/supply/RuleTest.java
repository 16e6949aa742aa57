package io.axiswright.engine.supply;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.CodeBasis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every rule stands in the table for both code bases, with its clause. */
class RuleTest {

    @ParameterizedTest
    @EnumSource
    void everyRuleHasValueAndClause(Rule rule) {
        for (var basis : CodeBasis.values()) {
            assertThat(rule.under(basis).value()).isPositive();
            assertThat(rule.under(basis).clause()).isNotBlank();
        }
    }
}
