package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.quantity.Current;
import org.jspecify.annotations.Nullable;

/**
 * A point of a chain's network where voltage is asked for.
 *
 * @param subject id of the gateway, the axis or the field device
 * @param kind what it is
 * @param pointer JSON Pointer for findings about it
 * @param minimum lowest voltage it works at, without its brake, V
 * @param always what it takes as long as it has voltage
 * @param starting what it takes instead while it starts
 * @param switched what it takes besides when outputs are on
 * @param brakeMinimum lowest voltage its brake releases at, V; 0 without a brake
 * @param holdConductance conductance of the released brake, S
 * @param pullInConductance conductance of the brake while it releases, S
 * @param restTime from the demand of its stop until it rests and its brake holds, s; 0 if it stops without control power
 * @param keepsAlive whether its position must survive a loss of mains
 */
record Terminal(
        String subject,
        TerminalKind kind,
        String pointer,
        double minimum,
        Draw always,
        Draw starting,
        Draw switched,
        double brakeMinimum,
        double holdConductance,
        double pullInConductance,
        double restTime,
        boolean keepsAlive) {

    private static final double NOMINAL_SQUARED = ControlConstants.NOMINAL * ControlConstants.NOMINAL;

    static Terminal of(ControlNode node) {
        var gateway = node.gateway();
        Draw power = Draw.ofPower(gateway.ownPower().si());
        Draw reserved = node.reservedCurrent() == null
                ? Draw.NOTHING
                : Draw.ofCurrent(node.reservedCurrent().si());
        return new Terminal(
                node.id(),
                TerminalKind.GATEWAY,
                ControlFindings.POINTER,
                gateway.minimumVoltage().si(),
                power.plus(reserved),
                starting(power, gateway.inrushCurrent()).plus(reserved),
                Draw.NOTHING,
                0,
                0,
                0,
                0,
                false);
    }

    /** An axis at the far end of its spur; a brake of P watts at 24 V is a conductance of P/24². */
    static Terminal of(ControlLoad load) {
        var brake = load.brake();
        var unit = load.driveUnit();
        Draw power = Draw.ofPower(unit.logicPower().si());
        return new Terminal(
                load.axis(),
                TerminalKind.DRIVE_UNIT,
                ControlFindings.axisPointer(load),
                unit.logicMinimumVoltage().si(),
                power,
                starting(power, unit.logicInrushCurrent()),
                Draw.NOTHING,
                brake == null ? 0 : brake.minimumVoltage().si(),
                brake == null ? 0 : brake.holdPower().si() / NOMINAL_SQUARED,
                brake == null ? 0 : brake.pullInPower().si() / NOMINAL_SQUARED,
                load.restTime() == null ? 0 : load.restTime().si(),
                load.keepAlive());
    }

    /** A field device at the far end of its own cable. */
    static Terminal of(FieldLoad load) {
        FieldDevice device = load.device();
        Draw draw = Draw.of(device);
        Draw always = device.switched() ? Draw.NOTHING : draw;
        return new Terminal(
                device.id(),
                TerminalKind.FIELD_DEVICE,
                ControlFindings.POINTER + "/fieldDevices/" + load.index(),
                device.minimumVoltage().si(),
                always,
                always,
                device.switched() ? draw : Draw.NOTHING,
                0,
                0,
                0,
                0,
                false);
    }

    /** An inrush below what the power takes anyway is none. */
    private static Draw starting(Draw power, @Nullable Current inrush) {
        return inrush != null && inrush.si() > power.at(ControlConstants.NOMINAL) ? new Draw(0, 0, inrush.si()) : power;
    }

    /** What it takes in a mode. */
    Draw draw(ControlMode mode, boolean pullingIn) {
        Draw brake = Draw.ofConductance(pullingIn ? pullInConductance : holdConductance);
        return switch (mode) {
            case STANDBY -> always;
            case START_UP -> starting;
            case RUNNING -> always.plus(brake);
            case OUTPUTS_ON, BRAKES_TOGETHER, BRAKES_STAGGERED ->
                always.plus(brake).plus(switched);
        };
    }

    boolean hasBrake() {
        return pullInConductance > 0;
    }

    boolean hasInrush() {
        return !starting.equals(always);
    }

    /** What it is held against without its brake: its own minimum or the band's lower end, V. */
    double required() {
        return Math.max(minimum, ControlConstants.BAND_LOW);
    }

    /** What is needed while its brake releases, V. */
    double requiredToRelease() {
        return Math.max(required(), brakeMinimum);
    }
}
