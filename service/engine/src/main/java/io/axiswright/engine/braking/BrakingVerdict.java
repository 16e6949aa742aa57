package io.axiswright.engine.braking;

/** What the returned energy of a DC bus asks for. */
public enum BrakingVerdict {
    /** The bus stays under its trip voltage even if motors and drives were free of loss. */
    ABSORBED,
    /** It stays under only because motors and drives burn part of the energy. */
    ABSORBED_WITH_LOSSES,
    /** It needs the braking unit chosen. */
    NEEDS_BRAKING_UNIT,
    /** It would trip, and no braking unit offered prevents that within its own limits. */
    NONE_FITS
}
