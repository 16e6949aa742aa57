package io.axiswright.engine.conductor;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.Raceway;
import org.jspecify.annotations.Nullable;

/** A circuit with everything ordinary; tests change what they are about. */
final class CircuitBuilder {

    private static final double ICE_POINT = 273.15;

    String id = "c1";
    CircuitKind kind = CircuitKind.AC_THREE_PHASE;
    CircuitUse use = CircuitUse.POWER;
    LoadKind loadKind = LoadKind.GENERAL;
    double amperes = 10;
    double volts = 400;
    double metres = 1;
    double powerFactor = 1;
    InstallationMethod method = InstallationMethod.B1;
    Insulation insulation = Insulation.PVC_70;
    ConductorMaterial material = ConductorMaterial.COPPER;
    double ambient = 30;
    int grouped = 1;
    double termination = 75;
    double dropLimit = 0.05;
    DeviceKind device = DeviceKind.BREAKER;

    @Nullable
    Double rating;

    @Nullable
    Double fault;

    @Nullable
    Double clearing;

    @Nullable
    Raceway raceway;

    @Nullable
    ConductorClass construction;

    @Nullable
    Double largest;

    @Nullable
    ResistorPulse pulse;

    @Nullable
    Double leakage;

    @Nullable
    Double thirdHarmonic;

    @Nullable
    Integer parallel;

    @Nullable
    TerminalRange terminals;

    @Nullable
    Boolean aluminiumTerminals;

    @Nullable
    Integer together;

    @Nullable
    Boolean moving;

    static CircuitBuilder iec(double amperes) {
        var builder = new CircuitBuilder();
        builder.amperes = amperes;
        return builder;
    }

    static CircuitBuilder nec(LoadKind loadKind, double amperes) {
        var builder = new CircuitBuilder();
        builder.loadKind = loadKind;
        builder.amperes = amperes;
        builder.insulation = Insulation.NEC_90;
        builder.volts = 480;
        return builder;
    }

    CircuitBuilder id(String value) {
        id = value;
        return this;
    }

    CircuitBuilder kind(CircuitKind value) {
        kind = value;
        return this;
    }

    CircuitBuilder control() {
        use = CircuitUse.CONTROL;
        return this;
    }

    CircuitBuilder amperes(double value) {
        amperes = value;
        return this;
    }

    CircuitBuilder run(double volts, double metres, double dropLimit) {
        this.volts = volts;
        this.metres = metres;
        this.dropLimit = dropLimit;
        return this;
    }

    CircuitBuilder powerFactor(double value) {
        powerFactor = value;
        return this;
    }

    CircuitBuilder method(InstallationMethod value) {
        method = value;
        return this;
    }

    CircuitBuilder insulation(Insulation value) {
        insulation = value;
        return this;
    }

    CircuitBuilder ambient(double celsius) {
        ambient = celsius;
        return this;
    }

    CircuitBuilder grouped(int circuits) {
        grouped = circuits;
        return this;
    }

    CircuitBuilder termination(double celsius) {
        termination = celsius;
        return this;
    }

    CircuitBuilder device(DeviceKind kind, @Nullable Double amperes) {
        device = kind;
        rating = amperes;
        return this;
    }

    CircuitBuilder fault(@Nullable Double amperes, @Nullable Double seconds) {
        fault = amperes;
        clearing = seconds;
        return this;
    }

    CircuitBuilder raceway(Raceway value) {
        raceway = value;
        return this;
    }

    CircuitBuilder construction(ConductorClass value) {
        construction = value;
        return this;
    }

    CircuitBuilder largest(double amperes) {
        largest = amperes;
        return this;
    }

    CircuitBuilder pulse(double on, double off) {
        pulse = new ResistorPulse(new Time(on), new Time(off));
        return this;
    }

    CircuitBuilder leakage(double amperes) {
        leakage = amperes;
        return this;
    }

    CircuitBuilder thirdHarmonic(double share) {
        thirdHarmonic = share;
        return this;
    }

    CircuitBuilder parallel(int most) {
        parallel = most;
        return this;
    }

    CircuitBuilder terminals(@Nullable String smallest, @Nullable String largest) {
        terminals = new TerminalRange(
                smallest == null ? null : new ConductorSize(smallest),
                largest == null ? null : new ConductorSize(largest));
        return this;
    }

    CircuitBuilder together(int conductors) {
        together = conductors;
        return this;
    }

    CircuitBuilder moving() {
        moving = true;
        return this;
    }

    Circuit build() {
        return new Circuit(
                id,
                kind,
                use,
                loadKind,
                new Current(amperes),
                new Voltage(volts),
                new Length(metres),
                powerFactor,
                method,
                insulation,
                material,
                new Temperature(ambient + ICE_POINT),
                grouped,
                new Temperature(termination + ICE_POINT),
                dropLimit,
                device,
                rating == null ? null : new Current(rating),
                fault == null ? null : new Current(fault),
                clearing == null ? null : new Time(clearing),
                raceway,
                construction,
                largest == null ? null : new Current(largest),
                pulse,
                leakage == null ? null : new Current(leakage),
                thirdHarmonic,
                parallel,
                terminals,
                together,
                moving,
                aluminiumTerminals);
    }
}
