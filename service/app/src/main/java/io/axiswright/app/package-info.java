/** The Spring Boot application around the engine. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app;
