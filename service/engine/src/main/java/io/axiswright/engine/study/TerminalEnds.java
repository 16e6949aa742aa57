package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.TerminalFit;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The terminals that the conductors of circuits go into: of the protective device, and of the loads. */
final class TerminalEnds {

    private record End(String of, TerminalRange range) {}

    private final Stock stock;
    private final Map<String, SupplyLoad> loads;

    TerminalEnds(Stock stock, SupplyRequest asked) {
        this.stock = stock;
        this.loads = asked.loads().stream().collect(Collectors.toMap(SupplyLoad::id, Function.identity()));
    }

    /** The thinnest conductor that all ends hold; null where every size will do. */
    @Nullable
    TerminalRange smallest(@Nullable String device, List<String> fed) {
        return ends(device, fed).stream()
                .map(end -> end.range().smallest())
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .map(size -> new TerminalRange(size, null))
                .orElse(null);
    }

    /** The ends of a circuit that its conductors, those of its cable where it has one, do not go into. */
    List<Finding> findings(
            CircuitConductors sized,
            @Nullable PowerCable cable,
            @Nullable String device,
            List<String> fed,
            String pointer) {
        ConductorSize laid = cable == null
                ? sized.conductor()
                : stock.get(BulkCable.class, cable.item()).size();
        if (laid == null) {
            return List.of();
        }
        Area area = laid.area();
        return ends(device, fed).stream()
                .filter(end -> !end.range().admits(area.si()))
                .map(end -> FindingCode.STUDY_TERMINAL_MISFIT.at(
                        end.of() + " (circuit " + sized.id() + ")",
                        pointer,
                        TerminalFit.CLAUSE,
                        area,
                        Objects.requireNonNull(end.range().largest()).area()))
                .toList();
    }

    private List<End> ends(@Nullable String device, List<String> fed) {
        List<End> ends = new ArrayList<>();
        ProtectiveDevice item = stock.find(ProtectiveDevice.class, device);
        if (item != null && item.terminals() != null) {
            ends.add(new End(item.id(), item.terminals()));
        }
        for (String id : fed) {
            SupplyLoad load = loads.get(id);
            if (load != null && load.terminals() != null) {
                ends.add(new End(id, load.terminals()));
            }
        }
        return ends;
    }
}
