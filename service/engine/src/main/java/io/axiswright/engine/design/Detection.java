package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** How a safeguard notices that somebody comes near. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Detection
        permits LightCurtain, BeamGrid, ParallelField, PressureMat, TwoHandControl, InterlockedGuard {}
