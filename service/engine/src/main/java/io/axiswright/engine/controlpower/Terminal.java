package io.axiswright.engine.controlpower;

/**
 * A point of a chain's network where voltage is asked for.
 *
 * @param subject id of the gateway or the axis
 * @param kind what it is
 * @param pointer JSON Pointer for findings about it
 * @param minimum lowest voltage its electronics work at, V
 * @param power what they take, W
 * @param brakeMinimum lowest voltage its brake releases at, V; 0 without a brake
 * @param holdConductance conductance of the released brake, S
 * @param pullInConductance conductance of the brake while it releases, S
 */
record Terminal(
        String subject,
        TerminalKind kind,
        String pointer,
        double minimum,
        double power,
        double brakeMinimum,
        double holdConductance,
        double pullInConductance) {

    private static final double NOMINAL_SQUARED = ControlConstants.NOMINAL * ControlConstants.NOMINAL;

    static Terminal of(ControlNode node) {
        var gateway = node.gateway();
        return new Terminal(
                node.id(),
                TerminalKind.GATEWAY,
                ControlFindings.POINTER,
                gateway.minimumVoltage().si(),
                gateway.ownPower().si(),
                0,
                0,
                0);
    }

    /** An axis at the far end of its spur; a brake of P watts at 24 V is a conductance of P/24². */
    static Terminal of(ControlLoad load) {
        var brake = load.brake();
        return new Terminal(
                load.axis(),
                TerminalKind.DRIVE_UNIT,
                ControlFindings.axisPointer(load),
                load.driveUnit().logicMinimumVoltage().si(),
                load.driveUnit().logicPower().si(),
                brake == null ? 0 : brake.minimumVoltage().si(),
                brake == null ? 0 : brake.holdPower().si() / NOMINAL_SQUARED,
                brake == null ? 0 : brake.pullInPower().si() / NOMINAL_SQUARED);
    }

    boolean hasBrake() {
        return pullInConductance > 0;
    }

    /** What its electronics are held against: their own minimum or the band's lower end, V. */
    double required() {
        return Math.max(minimum, ControlConstants.BAND_LOW);
    }

    /** What is needed while its brake releases, V. */
    double requiredToRelease() {
        return Math.max(required(), brakeMinimum);
    }
}
