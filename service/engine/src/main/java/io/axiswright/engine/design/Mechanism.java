package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** What turns shaft rotation into the load's motion. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Mechanism
        permits Screw, Belt, RackAndPinion, Conveyor, Hoist, RotaryTable, DirectDrive, Crank, Winder, Custom {

    /** Whether its moves are stated as angles; as lengths otherwise. */
    default boolean movesByAngle() {
        return switch (this) {
            case Screw _, Belt _, RackAndPinion _, Conveyor _, Hoist _ -> false;
            case RotaryTable _, DirectDrive _, Crank _, Custom _ -> true;
            case Winder winder -> winder.motion() == WinderMotion.SHAFT;
        };
    }

    /** Whether payloads are masses and process efforts forces; moments of inertia and torques otherwise. */
    default boolean carriesMass() {
        return switch (this) {
            case Screw _, Belt _, RackAndPinion _, Conveyor _, Hoist _, Crank _, Winder _ -> true;
            case RotaryTable _, DirectDrive _, Custom _ -> false;
        };
    }
}
