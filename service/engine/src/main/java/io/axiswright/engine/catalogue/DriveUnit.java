package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.MotorConstant;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Motor with its power electronics, built together or apart.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param frameSize frame size, by which brakes, kits and feet fit
 * @param feed what it is fed from
 * @param ratedVoltage rated input voltage: line to line, line to neutral, or DC
 * @param ratedInputCurrent rated input current
 * @param maxProtectiveDevice highest rating of the protective device ahead
 * @param maxUnitsPerCircuit most units on one branch circuit
 * @param shortCircuitRating short-circuit current rating
 * @param leakageCurrent protective-conductor current in normal operation
 * @param rotorInertia inertia of the rotor
 * @param motorConstant torque per square root of copper loss, hot
 * @param continuousCurve continuous torque over speed, rising speeds, at the rated conditions
 * @param intermittentCurve intermittent torque over speed, rising speeds, at the rated voltage
 * @param ratedAmbient ambient the continuous curve holds at
 * @param ratedRise winding temperature rise at the continuous curve
 * @param windingTimeConstant thermal time constant of the winding
 * @param standbyLoss loss of the power electronics, independent of load
 * @param busCapacitance least capacitance of its DC bus
 * @param busTripVoltage DC-bus voltage at which it trips
 * @param logicPower 24 V power of its control electronics
 * @param logicMinimumVoltage lowest voltage at which they work
 * @param keepAliveInput whether a keep-alive feed preserves its position
 * @param shaftDiameter shaft diameter
 * @param shaftLength usable shaft length
 * @param inertiaRatioLimit highest load-to-motor inertia ratio its control is tuned for
 * @param housing the slower body behind the winding; the winding heats as one body if absent
 * @param electronicsAltitude what its electronics lose at altitude; nothing if absent
 * @param shaftBearing what its shaft stands across its length; not checked if absent
 * @param logicInrushCurrent 24 V current its control electronics take while they start; what their power takes if absent
 * @param ratedLoss loss of the power electronics, that without load included, at the torque with which the continuous curve
 *     begins; only the loss without load is counted if absent
 * @param rectifier its input, if that is an uncontrolled rectifier on the mains; its harmonic currents are not known if absent
 * @param inputInrush peak of its input current when it is switched on; not known if absent
 * @param inputTerminals sizes of conductors its mains terminals take; any if absent
 * @param stallTorque torque it holds for ever at standstill, at whatever angle, at the rated conditions: one phase may then carry √2
 *     times the rms current all the time; if absent, standstill is judged as turning, with a caution where the continuous torque
 *     over √2 would not do
 */
public record DriveUnit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        String frameSize,
        Feed feed,
        @Bounds(above = 0, max = 1500) Voltage ratedVoltage,
        @Bounds(above = 0) Current ratedInputCurrent,
        @Bounds(above = 0) Current maxProtectiveDevice,
        @Bounds(min = 1, max = 64) int maxUnitsPerCircuit,
        @Bounds(above = 0) Current shortCircuitRating,
        @Bounds(min = 0) Current leakageCurrent,
        @Bounds(above = 0) Inertia rotorInertia,
        @Bounds(above = 0) MotorConstant motorConstant,
        @Count(min = 2, max = 100) List<CurvePoint> continuousCurve,
        @Count(min = 2, max = 100) List<CurvePoint> intermittentCurve,
        @Bounds(min = 273.15, max = 353.15) Temperature ratedAmbient,
        @Bounds(above = 0) TemperatureRise ratedRise,
        @Bounds(above = 0, max = 1000000) Time windingTimeConstant,
        @Bounds(min = 0) Power standbyLoss,
        @Bounds(above = 0) Capacitance busCapacitance,
        @Bounds(above = 0) Voltage busTripVoltage,
        @Bounds(min = 0) Power logicPower,
        @Bounds(above = 0) Voltage logicMinimumVoltage,
        boolean keepAliveInput,
        @Bounds(above = 0) Length shaftDiameter,
        @Bounds(above = 0) Length shaftLength,
        @Bounds(above = 0, max = 100) double inertiaRatioLimit,
        @Nullable HousingHeat housing,
        @Nullable AltitudeRule electronicsAltitude,
        @Nullable ShaftBearing shaftBearing,
        @Bounds(above = 0) @Nullable Current logicInrushCurrent,
        @Bounds(min = 0) @Nullable Power ratedLoss,
        @Nullable RectifierInput rectifier,
        @Bounds(above = 0) @Nullable Current inputInrush,
        @Nullable TerminalRange inputTerminals,
        @Bounds(above = 0) @Nullable Torque stallTorque)
        implements Item {

    /** No drive unit gives so many times its rated torque; one that had to has no loss worth telling. */
    private static final double MOST_OVERLOAD = 1000;

    /** A drive unit whose winding heats as one body and whose electronics have no altitude rule. */
    public DriveUnit(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            String frameSize,
            Feed feed,
            Voltage ratedVoltage,
            Current ratedInputCurrent,
            Current maxProtectiveDevice,
            int maxUnitsPerCircuit,
            Current shortCircuitRating,
            Current leakageCurrent,
            Inertia rotorInertia,
            MotorConstant motorConstant,
            List<CurvePoint> continuousCurve,
            List<CurvePoint> intermittentCurve,
            Temperature ratedAmbient,
            TemperatureRise ratedRise,
            Time windingTimeConstant,
            Power standbyLoss,
            Capacitance busCapacitance,
            Voltage busTripVoltage,
            Power logicPower,
            Voltage logicMinimumVoltage,
            boolean keepAliveInput,
            Length shaftDiameter,
            Length shaftLength,
            double inertiaRatioLimit) {
        this(
                id,
                description,
                price,
                needs,
                frameSize,
                feed,
                ratedVoltage,
                ratedInputCurrent,
                maxProtectiveDevice,
                maxUnitsPerCircuit,
                shortCircuitRating,
                leakageCurrent,
                rotorInertia,
                motorConstant,
                continuousCurve,
                intermittentCurve,
                ratedAmbient,
                ratedRise,
                windingTimeConstant,
                standbyLoss,
                busCapacitance,
                busTripVoltage,
                logicPower,
                logicMinimumVoltage,
                keepAliveInput,
                shaftDiameter,
                shaftLength,
                inertiaRatioLimit,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /**
     * What its power electronics lose beyond {@code standbyLoss} while its torque has the given effective value: a bound for
     * every cycle of that value, if the loss is the sum of parts in proportion to the torque and to its square. The mean
     * torque is no more than the effective one, so with x effective over rated torque a·x + b·x² is no less than the loss and
     * no more than (a + b)·max(x, x²). Nothing where {@code ratedLoss} is not stated.
     */
    public Optional<Power> loadLoss(Torque effective) {
        if (ratedLoss == null) {
            return Optional.empty();
        }
        double rated = continuousCurve.getFirst().torque().si();
        double share = effective.si() == 0 ? 0 : Math.min(MOST_OVERLOAD, effective.si() / rated);
        return Optional.of(new Power((ratedLoss.si() - standbyLoss.si()) * Math.max(share, share * share)));
    }
}
