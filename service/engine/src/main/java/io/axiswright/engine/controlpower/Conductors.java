package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.IecConductors;
import java.util.Objects;

/** Loop resistance of the 24 V conductors of a cable, there and back, hot, connectors included. */
final class Conductors {

    static final double TWENTY_CELSIUS = 293.15;

    private Conductors() {}

    /** Temperature conductors are taken at: the hottest air on the machine plus the rise of a lightly loaded cable. */
    static Temperature temperature(Site site) {
        return new Temperature(
                Math.max(site.ambient().si(), site.enclosureAmbient().si()) + ControlConstants.CONDUCTOR_RISE);
    }

    /** Resistance of one conductor per length at 20 °C, Ω/m: the class 5 maximum of IEC 60228 where it lists the size, ρ20 · k / A for others. */
    static double coldResistance(ConductorSize size) {
        return IecConductors.resistanceAt20(ConductorMaterial.COPPER, size, ConductorClass.CLASS_5)
                .map(row -> row.value().si())
                .orElseGet(() -> ControlConstants.COPPER_RESISTIVITY
                        * ControlConstants.STRANDING
                        / size.area().si());
    }

    /** R = 2 · R20' · ℓ · (1 + α (T − 20 °C)) + R_connectors, Ω; the cable must have 24 V conductors. */
    static double loopResistance(LaidCable cable, Temperature conductor) {
        double cold = coldResistance(Objects.requireNonNull(cable.powerConductor()));
        double coefficient = IecConductors.temperatureCoefficientAt20(ConductorMaterial.COPPER)
                .value();
        double hot = cold * cable.length().si() * (1 + coefficient * (conductor.si() - TWENTY_CELSIUS));
        var connectors = cable.connectorResistance();
        return 2 * hot + (connectors == null ? 0 : connectors.si());
    }
}
