package io.axiswright.app.openapi;

import io.axiswright.app.problem.ProblemKind;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The kinds of failure a handler, or every handler of a class, may answer with beside those that follow from its form: a
 * body brings 400, 413, 415 and 422, a path variable 400 and 404, any other parameter 400, and every handler 406 and 500.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Fails {

    /** The kinds. */
    ProblemKind[] value();
}
