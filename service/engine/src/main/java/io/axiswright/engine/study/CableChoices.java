package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.energy.CableOption;
import io.axiswright.engine.energy.CableOptions;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The cables each circuit could have within what the code asks for, with what they cost and lose. */
final class CableChoices {

    private final StudyRun run;
    private final CableHeat heat;
    private final PowerCableChoice choice;
    private final Map<String, CircuitConductors> conductors;

    CableChoices(StudyRun run, CableHeat heat) {
        this.run = run;
        this.heat = heat;
        this.choice = new PowerCableChoice(run.request());
        this.conductors = run.conductors().circuits().stream()
                .collect(Collectors.toMap(CircuitConductors::id, Function.identity()));
    }

    /** Those of every circuit whose selected cable has a price. */
    List<CableOptions> all() {
        return run.conductoring().cables().stream()
                .map(this::of)
                .filter(options -> options.options().stream()
                        .anyMatch(option -> option.item().equals(options.selected())))
                .toList();
    }

    private CableOptions of(PowerCable cable) {
        BulkCable selected = run.stock().get(BulkCable.class, cable.item());
        List<CableOption> options = new ArrayList<>();
        for (BulkCable one : choice.alternatives(
                Objects.requireNonNull(conductors.get(cable.circuit())), selected, cable.moving())) {
            heat.watts(cable, one)
                    .ifPresent(watts -> options.add(new CableOption(
                            one.id(), one.size(), Objects.requireNonNull(one.price()), new Power(watts))));
        }
        return new CableOptions(
                cable.circuit(),
                cable.pieces().getFirst().pointer(),
                new Length(cable.length()),
                cable.item(),
                List.copyOf(options));
    }
}
