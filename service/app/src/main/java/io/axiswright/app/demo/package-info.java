/** The invented demonstration: its catalogue, stored when the service starts, and a request to try. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.demo;
