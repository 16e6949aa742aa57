package io.axiswright.engine.quantity;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How many elements a list on the wire may have; lists without it may have up to 4096. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Count {

    /** Fewest. */
    int min() default 0;

    /** Most. */
    int max() default 4096;
}
