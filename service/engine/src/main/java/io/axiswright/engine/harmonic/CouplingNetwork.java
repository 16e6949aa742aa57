package io.axiswright.engine.harmonic;

import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.CurrentDistortionLimits;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The network ahead of the machine: its reactance at the supply terminals and at the point of common coupling. */
final class CouplingNetwork {

    /** R/X of a supply of which it is not stated, as for its highest fault currents. */
    private static final double USUAL_RATIO = 0.1;

    private final HarmonicRequest request;

    CouplingNetwork(HarmonicRequest request) {
        this.request = request;
    }

    double angularFrequency() {
        return 2 * Math.PI * request.mains().frequency().si();
    }

    /** Current of a short circuit at the point of common coupling, A. */
    double shortCircuitCurrent() {
        Current stated = request.coupling().shortCircuitCurrent();
        return (stated == null ? request.mains().prospectiveFaultCurrent() : stated).si();
    }

    /** Reactance in one line at the supply terminals, ohm. */
    double reactanceAtTerminals() {
        return reactance(request.mains().prospectiveFaultCurrent().si());
    }

    private double reactance(double faultCurrent) {
        Double stated = request.mains().faultResistanceRatio();
        double ratio = stated == null ? USUAL_RATIO : stated;
        return lineVoltage() / faultCurrent / Math.hypot(1, ratio);
    }

    /** Voltage that one line drives its fault current with, V: of one phase, half of what is across both conductors. */
    private double lineVoltage() {
        Mains mains = request.mains();
        boolean threePhase = mains.system() == SupplySystem.THREE_PHASE_THREE_WIRE
                || mains.system() == SupplySystem.THREE_PHASE_FOUR_WIRE;
        return mains.voltage().si() / (threePhase ? Math.sqrt(3) : 2);
    }

    /** What the currents of a line come to at the point of common coupling. */
    LineDistortion distortion(int line, LineCurrents currents, double demand, CurrentDistortionLimits limits) {
        double reactance = reactance(shortCircuitCurrent());
        List<HarmonicOrder> orders = IntStream.iterate(3, h -> h < CurrentDistortionLimits.HIGHEST_ORDER, h -> h + 2)
                .mapToObj(h -> {
                    double current = currents.effective(line, h);
                    return new HarmonicOrder(
                            h,
                            new Current(current),
                            current / demand,
                            limits.order(h).value().si(),
                            h * reactance * current / lineVoltage());
                })
                .toList();
        return new LineDistortion(
                request.lines().get(line),
                new Current(
                        currents.effective(line, 1) + request.others().get(line).si()),
                together(orders.stream().mapToDouble(HarmonicOrder::share)),
                together(orders.stream().mapToDouble(HarmonicOrder::voltageShare)),
                orders);
    }

    private static double together(DoubleStream shares) {
        return Math.sqrt(shares.map(s -> s * s).sum());
    }
}
