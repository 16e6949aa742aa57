/** AC supply: branch circuits and their protective devices, loads on the phases, the feeder, leakage current. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.supply;
