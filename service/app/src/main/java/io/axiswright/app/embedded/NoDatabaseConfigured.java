package io.axiswright.app.embedded;

import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/** Holds when {@code spring.datasource.url} is absent or blank. */
final class NoDatabaseConfigured implements Condition {

    @Override
    public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
        return !StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"));
    }
}
