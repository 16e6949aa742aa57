package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.NeedKind;

/** How binding a line is. */
public enum LineKind {
    /** Has to be bought. */
    REQUIRED,
    /** Has to be bought because a condition holds. */
    CONDITIONAL,
    /** May be bought. */
    OPTIONAL,
    /** The customer brings it. */
    CUSTOMER_SUPPLIED,
    /** Comes along without charge. */
    NO_CHARGE,
    /** Bought beside the machine, to be kept for it. */
    SPARE;

    /** The kind of the lines that demands and needs of that kind lead to. */
    static LineKind of(NeedKind kind) {
        return switch (kind) {
            case REQUIRED -> REQUIRED;
            case CONDITIONAL -> CONDITIONAL;
            case OPTIONAL -> OPTIONAL;
            case CUSTOMER_SUPPLIED -> CUSTOMER_SUPPLIED;
            case NO_CHARGE -> NO_CHARGE;
        };
    }

    /** The kind under which the lines stand that are bought together with those of this kind. */
    LineKind section() {
        return this == CONDITIONAL ? REQUIRED : this;
    }

    /** Whether lines of this kind cost anything. */
    boolean charged() {
        return switch (this) {
            case REQUIRED, CONDITIONAL, OPTIONAL, SPARE -> true;
            case CUSTOMER_SUPPLIED, NO_CHARGE -> false;
        };
    }
}
