package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Voltage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Requests for the tests of this package. */
final class Plant {

    static final Installation INSTALLATION = new Installation(
            new Position(new Length(0), new Length(0), new Length(0)),
            new Length(12),
            InstallationMethod.B1,
            Insulation.NEC_75,
            ConductorMaterial.COPPER,
            new Temperature(313.15),
            1,
            new Temperature(348.15),
            0.03,
            DeviceKind.BREAKER);

    private Plant() {}

    static Mains mains(SupplySystem system, double volts) {
        return mains(system, volts, 5000);
    }

    static Mains mains(SupplySystem system, double volts, double faultCurrent) {
        return new Mains(system, new Voltage(volts), 0.1, 0.1, new Frequency(60), new Current(faultCurrent));
    }

    static SupplyRequest request(CodeBasis basis, Mains mains, List<SupplyLoad> loads, List<ProtectiveDevice> devices) {
        return new SupplyRequest(basis, mains, INSTALLATION, loads, devices);
    }

    /** A drive that asks for nothing special. */
    static SupplyLoad drive(String id, Feed feed, double volts, double amperes, double deviceLimit) {
        return load(id, LoadUse.DRIVE, feed, volts, amperes, amperes, deviceLimit, 8, 10000, 0.001, null);
    }

    static SupplyLoad load(
            String id,
            LoadUse use,
            Feed feed,
            double volts,
            double amperes,
            double thermal,
            double deviceLimit,
            int units,
            double shortCircuitRating,
            double leakage,
            @Nullable String zone) {
        return new SupplyLoad(
                id,
                use,
                feed,
                new Voltage(volts),
                new Current(amperes),
                new Current(thermal),
                new Current(deviceLimit),
                units,
                new Current(shortCircuitRating),
                new Current(leakage),
                new Length(10),
                "/design/axes/" + id,
                zone,
                null);
    }

    /** The same load with a share in a DC bus. */
    static SupplyLoad onBus(SupplyLoad load, String bus) {
        return new SupplyLoad(
                load.id(),
                load.use(),
                load.feed(),
                load.ratedVoltage(),
                load.ratedCurrent(),
                load.thermalCurrent(),
                load.maxProtectiveDevice(),
                load.maxUnitsPerCircuit(),
                load.shortCircuitRating(),
                load.leakageCurrent(),
                load.routeLength(),
                load.pointer(),
                load.zone(),
                bus);
    }

    static ProtectiveDevice breaker(CodeBasis basis, int poles, double amperes, double interrupting, double price) {
        return new ProtectiveDevice(
                "breaker-" + poles + "p-" + amperes + "-" + interrupting,
                "breaker",
                new Money(BigDecimal.valueOf(price), "EUR"),
                List.of(),
                DeviceKind.BREAKER,
                basis,
                poles,
                new Current(amperes),
                new Current(interrupting),
                new Voltage(600));
    }

    /** Breakers of those ratings with 1, 2 and 3 poles, 10 kA. */
    static List<ProtectiveDevice> breakers(CodeBasis basis, double... ratings) {
        var devices = new ArrayList<ProtectiveDevice>();
        for (int poles = 1; poles <= 3; poles++) {
            for (double rating : ratings) {
                devices.add(breaker(basis, poles, rating, 10000, 10 * poles));
            }
        }
        return devices;
    }
}
