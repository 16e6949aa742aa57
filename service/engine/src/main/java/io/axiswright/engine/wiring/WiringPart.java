package io.axiswright.engine.wiring;

/**
 * An item chosen for the wiring.
 *
 * @param item its catalogue id
 * @param asker who asks for it
 * @param reason why
 * @param pointer JSON Pointer, in the request, to what asks
 * @param tool whether it is a tool, which the fitter may have
 */
public record WiringPart(String item, String asker, String reason, String pointer, boolean tool) {}
