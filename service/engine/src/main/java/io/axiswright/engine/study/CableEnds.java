package io.axiswright.engine.study;

import io.axiswright.engine.braking.GroupBraking;
import io.axiswright.engine.design.Axis;

/** What the places are called where cables end that have no port of their own. */
final class CableEnds {

    /** Where the supply reaches the machine. */
    static final String SUPPLY_TERMINALS = "supply terminals";

    /** Where the feeder ends. */
    static final String MAINS_PANEL = "mains panel";

    /** Where the stop demand comes from. */
    static final String STOP_SOURCE = "source of the stop demand";

    private CableEnds() {}

    /** The DC-bus terminals of an axis. */
    static String bus(Axis axis) {
        return "axis " + axis.id() + ", DC bus";
    }

    /** One of a bus's braking units, counted from 0. */
    static String brakingUnit(GroupBraking group, int unit) {
        return "braking unit " + (unit + 1) + " of DC bus " + group.id();
    }

    /** The resistor of one of a bus's braking units, counted from 0. */
    static String resistor(GroupBraking group, int unit) {
        return "resistor of " + brakingUnit(group, unit);
    }

    /** The stop input of a gateway or axis. */
    static String stopInput(String of) {
        return of + ", stop input";
    }

    /** The load side of a branch circuit's protective device. */
    static String circuit(String id) {
        return "circuit " + id + ", device";
    }

    /** The mains terminals of a load. */
    static String load(String id) {
        return "load " + id;
    }
}
