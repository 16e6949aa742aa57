/** What the caller states: the machine, its axes, its site, and the rules it is to be built to. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.design;
