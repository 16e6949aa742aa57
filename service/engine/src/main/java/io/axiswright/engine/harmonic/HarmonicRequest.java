package io.axiswright.engine.harmonic;

import io.axiswright.engine.design.CommonCoupling;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.quantity.Current;
import java.util.List;

/**
 * What draws current from the mains.
 *
 * @param mains what the machine is supplied from
 * @param coupling where distortion is held against limits
 * @param lines lines of the mains
 * @param rectifiers drive units with an uncontrolled rectifier of which enough is known
 * @param unknown ids of the mains-fed drive units whose input is not known
 * @param others currents of everything else, by line; taken as sines
 */
public record HarmonicRequest(
        Mains mains,
        CommonCoupling coupling,
        List<String> lines,
        List<Rectifier> rectifiers,
        List<String> unknown,
        List<Current> others) {}
