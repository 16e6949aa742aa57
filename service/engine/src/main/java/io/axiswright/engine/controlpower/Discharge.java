package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What happens on a control supply after mains is lost. First the supply's own energy lasts for a while. Then a buffer
 * feeds on: one that holds its voltage gives E = V I t; a capacitor straight on the output, C = 2 E / V_out², falls with
 * dt = C dV / I(V), summed in small steps of voltage. Until the last stop is over the loads are those with outputs on, then
 * those of standby: brakes then hold.
 */
final class Discharge {

    /** Largest step of voltage, V: Simpson's rule over it is exact to well below a millisecond. */
    private static final double STEP = 0.1;

    /** Where nothing is drawn at all, a buffer would last for ever, A. */
    private static final double LEAST_CURRENT = 1e-6;

    private final SupplyGroup group;
    private final Temperature conductor;
    private final double ownTime;
    private final double stopTime;

    /**
     * A loss of mains.
     *
     * @param ownTime how long the supply lasts by itself, s
     * @param stopTime when the last stop is over and brakes hold, s
     */
    Discharge(SupplyGroup group, Temperature conductor, double ownTime, double stopTime) {
        this.group = group;
        this.conductor = conductor;
        this.ownTime = ownTime;
        this.stopTime = stopTime;
    }

    /** All terminals of a supply at one voltage of its output. */
    private record Moment(double current, double[] voltages) {}

    /** How long each terminal of the supply, chain by chain, has the voltage it needs, s. */
    double[] inBand(Optional<Buffer> buffer) {
        double[] required = required();
        double[] times = new double[required.length];
        Optional<Moment> before =
                moment(ControlMode.OUTPUTS_ON, group.plans().getFirst().source().low());
        for (int k = 0; k < times.length; k++) {
            times[k] = before.isPresent() && before.get().voltages()[k] >= required[k] ? ownTime : 0;
        }
        buffer.ifPresent(b -> {
            var held = b.unit().heldVoltage();
            if (held != null) {
                addHeld(b, held.si(), required, times);
            } else {
                addFalling(b, required, times);
            }
        });
        return times;
    }

    private void addHeld(Buffer buffer, double voltage, double[] required, double[] times) {
        double charge = buffer.energy() / voltage;
        double heavyTime = Math.max(0, stopTime - ownTime);
        boolean[] alive = inBandSoFar(times);
        for (ControlMode mode : List.of(ControlMode.OUTPUTS_ON, ControlMode.STANDBY)) {
            double most = mode == ControlMode.OUTPUTS_ON ? heavyTime : Double.POSITIVE_INFINITY;
            Optional<Moment> moment = moment(mode, voltage);
            if (most > 0) {
                if (moment.isEmpty() || moment.get().current() > buffer.ratedCurrent()) {
                    return;
                }
                double time = Math.min(most, charge / moment.get().current());
                charge -= time * moment.get().current();
                for (int k = 0; k < times.length; k++) {
                    alive[k] &= moment.get().voltages()[k] >= required[k];
                    times[k] += alive[k] ? time : 0;
                }
                if (time < most) {
                    return;
                }
            }
        }
    }

    private void addFalling(Buffer buffer, double[] required, double[] times) {
        double output = group.supply().outputVoltage().si();
        double capacitance = 2 * buffer.energy() / (output * output);
        double voltage = group.plans().getFirst().source().low();
        double time = ownTime;
        ControlMode mode = time < stopTime ? ControlMode.OUTPUTS_ON : ControlMode.STANDBY;
        Optional<Moment> now = moment(mode, voltage);
        boolean[] alive = inBandSoFar(times);
        while (voltage > ControlConstants.BAND_LOW
                && now.isPresent()
                && now.get().current() <= buffer.ratedCurrent()) {
            double step = Math.min(STEP, voltage - ControlConstants.BAND_LOW);
            Optional<Moment> middle = moment(mode, voltage - step / 2);
            Optional<Moment> next = moment(mode, voltage - step);
            if (middle.isEmpty() || next.isEmpty()) {
                return;
            }
            double slow = 1 / now.get().current()
                    + 4 / middle.get().current()
                    + 1 / next.get().current();
            double duration = capacitance * step / 6 * slow;
            boolean changes = mode == ControlMode.OUTPUTS_ON && time + duration > stopTime;
            double share = changes ? (stopTime - time) / duration : 1;
            for (int k = 0; k < times.length; k++) {
                double from = now.get().voltages()[k] - required[k];
                double fall = now.get().voltages()[k] - next.get().voltages()[k];
                double kept = from < 0 ? 0 : Math.min(share, fall > 0 ? from / fall : 1);
                times[k] = alive[k] ? time + kept * duration : times[k];
                alive[k] &= kept >= share;
            }
            time += share * duration;
            voltage -= share * step;
            mode = changes ? ControlMode.STANDBY : mode;
            now = changes ? moment(mode, voltage) : next;
        }
    }

    private static boolean[] inBandSoFar(double[] times) {
        boolean[] alive = new boolean[times.length];
        for (int k = 0; k < times.length; k++) {
            alive[k] = times[k] > 0;
        }
        return alive;
    }

    private double[] required() {
        return group.plans().stream()
                .flatMap(plan -> plan.network().terminals().stream())
                .mapToDouble(Terminal::required)
                .toArray();
    }

    private Optional<Moment> moment(ControlMode mode, double voltage) {
        List<ModeState> states = new ArrayList<>();
        for (ChainPlan plan : group.plans()) {
            Optional<ModeState> state = ModeState.of(plan, mode, conductor, new SourceVoltages(voltage, voltage));
            if (state.isEmpty()) {
                return Optional.empty();
            }
            states.add(state.get());
        }
        return Optional.of(new Moment(
                Math.max(
                        LEAST_CURRENT,
                        states.stream().mapToDouble(ModeState::current).sum()),
                states.stream()
                        .flatMapToDouble(state -> Arrays.stream(state.voltages()))
                        .toArray()));
    }
}
