package io.axiswright.engine.braking;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Loads that run down at constant speed return power as long as they do. */
final class Lowering {

    private Lowering() {}

    /**
     * Every axis that returns power at constant speed somewhere in its cycle, all at once, each as long as the run of its
     * cycle that returns most; absent if none does.
     */
    static @Nullable BusPower of(List<BrakingAxis> axes, boolean losses) {
        List<PowerCourse> courses = axes.stream()
                .map(axis -> longest(
                        axis,
                        losses
                                ? PowerCourse.withLosses(axis.course(), axis.driveUnit())
                                : PowerCourse.withoutLosses(axis.course())))
                .flatMap(Optional::stream)
                .toList();
        return courses.isEmpty() ? null : BusPower.once(courses);
    }

    private static Optional<PowerCourse> longest(BrakingAxis axis, PowerCourse power) {
        double most = 0;
        Optional<PowerCourse> longest = Optional.empty();
        for (int k = 0; k < power.pieces().size(); k++) {
            PowerCourse.Piece piece = power.pieces().get(k);
            double length = piece.end() - piece.start();
            double energy = piece.power().coefficient(0) * length;
            boolean steady = axis.course().pieces().get(k).speed().degree() == 0
                    && axis.course().pieces().get(k).speed().at(0) != 0
                    && piece.power().degree() == 0;
            if (steady && energy > most) {
                most = energy;
                longest =
                        Optional.of(new PowerCourse(List.of(new PowerCourse.Piece(0, length, piece.power())), length));
            }
        }
        return longest;
    }

    /**
     * Running down from a machine at rest: the bus stands at the rectifier's voltage, or at switch-on if a chopper is at
     * work, whose resistor is as hot as the cycle makes it. Figures are those of one that switches infinitely fast, the course to
     * be drawn that of the chopper as it is.
     */
    static CaseOutcome on(BusPower power, Bus bus, Chopper chopper, double rise) {
        double start = chopper.present() ? chopper.onEnergy() : bus.floorEnergy();
        BusTrace trace = new BusSimulation(bus, chopper.regulating()).run(power, new BusState(start, false, rise));
        return new CaseOutcome(
                CaseKind.LOWERING,
                null,
                null,
                power.duration(),
                start,
                trace.end().energy(),
                trace.peakEnergy(),
                trace.peakInstant(),
                trace.tripInstant(),
                power.returned(),
                power.drawn(),
                trace.supplied(),
                trace.burned(),
                trace.burned(),
                trace.peakRise(),
                power.peak(),
                trace,
                null,
                new Replay(power, new BusState(start, chopper.present(), rise), chopper));
    }
}
