package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** How torque passes from the motor shaft to the hub. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Fastening
        permits KeyFastening,
                SetScrewFastening,
                ClampFastening,
                BushingFastening,
                InterferenceFastening,
                BondedFastening {}
