package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Temperature;
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

    /** R = 2 · ρ20 · k · ℓ / A · (1 + α (T − 20 °C)) + R_connectors, Ω; the cable must have 24 V conductors. */
    static double loopResistance(CableAssembly cable, Temperature conductor) {
        ConductorSize size = Objects.requireNonNull(cable.powerConductor());
        Area area = size.area();
        double cold = ControlConstants.COPPER_RESISTIVITY
                * ControlConstants.STRANDING
                * cable.length().si()
                / area.si();
        double hot = cold * (1 + ControlConstants.COPPER_COEFFICIENT * (conductor.si() - TWENTY_CELSIUS));
        var connectors = cable.connectorResistance();
        return 2 * hot + (connectors == null ? 0 : connectors.si());
    }
}
