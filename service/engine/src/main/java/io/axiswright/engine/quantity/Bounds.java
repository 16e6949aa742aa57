package io.axiswright.engine.quantity;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The values that make sense for a number or quantity on the wire, in SI units of its dimension. Checked where a document
 * is read and published in the API document, both together with the limits of its {@link Dimension}, which hold where this
 * says nothing; plain numbers with a fraction have those of {@link Dimension#RATIO}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Bounds {

    /** Exclusive lower bound. */
    double above() default Double.NEGATIVE_INFINITY;

    /** Inclusive lower bound. */
    double min() default Double.NEGATIVE_INFINITY;

    /** Inclusive upper bound. */
    double max() default Double.POSITIVE_INFINITY;
}
