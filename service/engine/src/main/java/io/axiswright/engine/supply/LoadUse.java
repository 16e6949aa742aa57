package io.axiswright.engine.supply;

/** What a load of the AC supply does; loads of different use do not share a branch circuit. */
public enum LoadUse {
    /** Drive unit. */
    DRIVE,
    /** 24 V DC supply: runs without pause. */
    CONTROL_SUPPLY,
    /** Fan of a forced ventilation. */
    VENTILATION,
    /** Transformer: feeds a panel of another voltage. */
    TRANSFORMER
}
