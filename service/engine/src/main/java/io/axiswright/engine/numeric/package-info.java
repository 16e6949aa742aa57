/** The little numerical mathematics the disciplines share: polynomials, their roots and integrals. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.numeric;
