package io.axiswright.engine.supply;

import io.axiswright.engine.design.SystemEarthing;

/** What a residual-current device is for, by how the supply is earthed. */
public enum ResidualDeviceRole {
    /** TN: protective devices can clear an earth fault; where there is such a device it adds protection. */
    ADDITIONAL,
    /** TT: the earth electrodes let too little flow for other devices, so it is what clears an earth fault. */
    FAULT_PROTECTION,
    /** IT: a first earth fault makes hardly any residual current; insulation monitoring tells of it instead. */
    FIRST_FAULT_UNSEEN;

    static ResidualDeviceRole in(SystemEarthing earthing) {
        return switch (earthing) {
            case TN -> ADDITIONAL;
            case TT -> FAULT_PROTECTION;
            case IT -> FIRST_FAULT_UNSEEN;
        };
    }
}
