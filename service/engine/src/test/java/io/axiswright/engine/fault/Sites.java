package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ClearingPoint;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Connection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Distributions for the tests of this package. */
final class Sites {

    static final CodeBasis IEC = CodeBasis.IEC_60204_1;
    static final CodeBasis NA = CodeBasis.NFPA_79;

    private Sites() {}

    /** 400 V, ±10 %, 10 kA, nothing else known. */
    static Mains plain() {
        return mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400, 10_000, null, null, null, null);
    }

    /** TN with a stated loop, R/X = 0.5. */
    static Mains stated(double loop) {
        return mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400, 10_000, 6_000.0, 0.5, SystemEarthing.TN, loop);
    }

    static Mains mains(
            SupplySystem system,
            double volts,
            double highest,
            @Nullable Double lowest,
            @Nullable Double ratio,
            @Nullable SystemEarthing earthing,
            @Nullable Double loop) {
        return new Mains(
                system,
                new Voltage(volts),
                0.1,
                0.1,
                new Frequency(50),
                new Current(highest),
                lowest == null ? null : new Current(lowest),
                ratio,
                earthing,
                loop == null ? null : new Resistance(loop));
    }

    static FaultRequest iec(Mains mains, FaultCircuit feeder, FaultCircuit... branches) {
        return new FaultRequest(
                IEC, mains, Insulation.PVC_70, new Temperature(343.15), feeder, List.of(branches), List.of());
    }

    static FaultRequest northAmerican(Mains mains, FaultCircuit feeder, FaultCircuit... branches) {
        return new FaultRequest(
                NA, mains, Insulation.NEC_75, new Temperature(348.15), feeder, List.of(branches), List.of());
    }

    static FaultCircuit feeder(@Nullable String size, double metres, @Nullable ProtectiveDevice device) {
        return new FaultCircuit(
                "feeder",
                "/design/mains",
                Connection.THREE_PHASE,
                true,
                size(size),
                size(size),
                device,
                List.of(new CircuitEnd("mains panel", "/design/mains", new Length(metres), null, null)));
    }

    static FaultCircuit branch(
            String id,
            Connection connection,
            @Nullable String size,
            @Nullable ProtectiveDevice device,
            CircuitEnd... ends) {
        return new FaultCircuit(
                id,
                "/design/axes/0",
                connection,
                connection == Connection.LINE_TO_NEUTRAL,
                size(size),
                size(size),
                device,
                List.of(ends));
    }

    static CircuitEnd drive(String id, double metres, double rating) {
        return new CircuitEnd(id, "/design/axes/0", new Length(metres), new Current(rating), null);
    }

    static CircuitEnd unrated(String id, double metres) {
        return new CircuitEnd(id, "/design/controlPower", new Length(metres), null, null);
    }

    private static @Nullable ConductorSize size(@Nullable String size) {
        return size == null ? null : new ConductorSize(size);
    }

    static ProtectiveDevice breaker(double rating, double interrupting) {
        return breaker(rating, interrupting, null, null);
    }

    /** A breaker that trips at once from ten times its rating. */
    static ProtectiveDevice quick(double rating, double letThrough) {
        return breaker(rating, 10_000, List.of(point(10 * rating, 0.01)), letThrough);
    }

    static ProtectiveDevice breaker(
            double rating, double interrupting, @Nullable List<ClearingPoint> points, @Nullable Double letThrough) {
        return new ProtectiveDevice(
                "breaker-" + rating,
                "breaker",
                null,
                List.of(),
                DeviceKind.BREAKER,
                IEC,
                3,
                new Current(rating),
                new Current(interrupting),
                new Voltage(440),
                points,
                letThrough == null ? null : new JouleIntegral(letThrough),
                null,
                null,
                null,
                null);
    }

    static ClearingPoint point(double amperes, double seconds) {
        return new ClearingPoint(new Current(amperes), new Time(seconds));
    }
}
