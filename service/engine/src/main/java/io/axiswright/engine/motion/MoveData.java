package io.axiswright.engine.motion;

import io.axiswright.engine.design.Move;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Wording;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularJerk;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Jerk;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearAcceleration;
import io.axiswright.engine.quantity.LinearJerk;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a move states, as magnitudes in SI units, and the faults found in it.
 *
 * @param distance how far
 * @param duration how long
 * @param topSpeed highest speed
 * @param acceleration highest acceleration
 * @param deceleration highest deceleration
 * @param jerk highest jerk
 * @param rotary whether they are angular
 * @param pointer JSON Pointer to the move
 * @param faults where faults are added
 */
record MoveData(
        @Nullable Double distance,
        @Nullable Double duration,
        @Nullable Double topSpeed,
        @Nullable Double acceleration,
        @Nullable Double deceleration,
        @Nullable Double jerk,
        boolean rotary,
        String pointer,
        List<Fault> faults) {

    static MoveData of(Move move, String pointer, List<Fault> faults) {
        return new MoveData(
                size(move.distance()),
                size(move.duration()),
                size(move.topSpeed()),
                size(move.acceleration()),
                size(move.deceleration()),
                size(move.jerk()),
                move.distance() instanceof Angle
                        || move.topSpeed() instanceof AngularSpeed
                        || move.acceleration() instanceof AngularAcceleration,
                pointer,
                faults);
    }

    private static @Nullable Double size(@Nullable Quantity quantity) {
        return quantity == null ? null : Double.valueOf(Math.abs(quantity.si()));
    }

    /** How many of distance, duration and top speed are stated. */
    int frame() {
        return count(distance, duration, topSpeed);
    }

    static int count(@Nullable Double... values) {
        int count = 0;
        for (Double value : values) {
            count += value == null ? 0 : 1;
        }
        return count;
    }

    String distance(double value) {
        return Wording.of(rotary ? new Angle(value) : new Length(value));
    }

    static String time(double value) {
        return Wording.of(new Time(value));
    }

    String speed(double value) {
        return Wording.of(rotary ? new AngularSpeed(value) : new Speed(value));
    }

    String acceleration(double value) {
        return Wording.of(rotary ? new AngularAcceleration(value) : new LinearAcceleration(value));
    }

    String jerk(double value) {
        Jerk jerk = rotary ? new AngularJerk(value) : new LinearJerk(value);
        return Wording.of(jerk);
    }

    /** The move does not state enough. */
    void missing(String accepted) {
        List<String> stated = stated();
        String detail = stated.isEmpty()
                ? "nothing but its law is stated of the move"
                : String.join(", ", stated) + " and the shares of the law do not fix the move";
        faults.add(new Fault(pointer, FaultCode.MISSING, detail, accepted));
    }

    /** The members that are stated. */
    private List<String> stated() {
        List<String> stated = new ArrayList<>();
        name(distance, "distance", stated);
        name(duration, "duration", stated);
        name(topSpeed, "topSpeed", stated);
        name(acceleration, "acceleration", stated);
        name(deceleration, "deceleration", stated);
        name(jerk, "jerk", stated);
        return stated;
    }

    private static void name(@Nullable Double value, String name, List<String> stated) {
        if (value != null) {
            stated.add(name);
        }
    }

    /** What a member states cannot be, whatever the others. */
    void impossible(String member, String detail, String accepted) {
        faults.add(new Fault(pointer + "/" + member, FaultCode.INCONSISTENT, detail, accepted));
    }

    /** What a member states clashes with the others, which are named. */
    void clash(String member, String detail, String accepted) {
        List<String> others = stated();
        others.remove(member);
        String beside = others.isEmpty() ? "" : "; stated beside it: " + String.join(", ", others);
        impossible(member, detail + beside, accepted);
    }
}
