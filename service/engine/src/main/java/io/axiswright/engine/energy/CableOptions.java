package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Length;
import java.util.List;

/**
 * The cables that would serve a circuit by the code, the cheapest of each size.
 *
 * @param circuit id of the circuit; "feeder" for the feeder
 * @param pointer JSON Pointer to what the circuit follows from
 * @param length length of cable it needs
 * @param selected catalogue id of the cable selected
 * @param options the cables, thinnest first, the selected one among them
 */
public record CableOptions(String circuit, String pointer, Length length, String selected, List<CableOption> options) {}
