package io.axiswright.engine.supply;

/** Types of residual-current devices by the residual currents they see (IEC 60755), each sees those before it too. */
public enum ResidualDeviceType {
    /** Alternating and pulsating direct currents: rectifiers between a line and neutral. */
    A,
    /** Currents of mixed frequency as well: converters between a line and neutral. */
    F,
    /** Smooth direct currents as well: rectifiers between lines. */
    B;

    /** What a load asks for by its rectifier; its maker's instructions come first. */
    static ResidualDeviceType of(LoadUse use, Connection connection) {
        return switch (use) {
            // no direct current comes through a transformer
            case VENTILATION, TRANSFORMER -> A;
            case CONTROL_SUPPLY -> connection == Connection.LINE_TO_NEUTRAL ? A : B;
            case DRIVE -> connection == Connection.LINE_TO_NEUTRAL ? F : B;
        };
    }
}
