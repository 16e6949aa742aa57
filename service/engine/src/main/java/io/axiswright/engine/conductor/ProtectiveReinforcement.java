package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.standard.ProtectiveConductors.Reinforcement;
import io.axiswright.engine.standard.Sourced;

/** A protective conductor that carries current in normal operation must not break unnoticed (IEC 60204-1 8.2.6). */
final class ProtectiveReinforcement {

    private ProtectiveReinforcement() {}

    /** The size the other rules ask for, or the one this rule asks for if that is larger. */
    static Sourced<ConductorSize> of(Circuit circuit, CodeBasis basis, Sourced<ConductorSize> other) {
        var rule = ProtectiveConductors.reinforcement(basis, circuit.material());
        return applies(circuit, rule.value()) && rule.value().size().compareTo(other.value()) > 0
                ? new Sourced<>(rule.value().size(), rule.source())
                : other;
    }

    private static boolean applies(Circuit circuit, Reinforcement rule) {
        Current leakage = circuit.leakageCurrent();
        return leakage != null && !Limits.within(leakage.si(), rule.above().si());
    }
}
