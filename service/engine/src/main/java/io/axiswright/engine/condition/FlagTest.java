package io.axiswright.engine.condition;

import com.fasterxml.jackson.annotation.JsonTypeName;

/**
 * Something is so.
 *
 * @param attribute what is so
 */
@JsonTypeName("FLAG")
public record FlagTest(FlagAttribute attribute) implements Condition {}
