package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.Transformers;
import io.axiswright.engine.duty.AxisDuty;
import io.axiswright.engine.enclosure.EnclosedHeat;
import io.axiswright.engine.enclosure.EnclosureRequest;
import io.axiswright.engine.enclosure.HeatSource;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.supply.TransformerNeed;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What gives off heat in the stated enclosures. */
final class EnclosureParts {

    private EnclosureParts() {}

    /** Control power and network are asked for only where an enclosure is stated, the supply where transformers stand in one. */
    static EnclosureRequest request(StudyRun run) {
        StudyRequest request = run.request();
        Stock stock = run.stock();
        List<Enclosure> enclosures = Needed.installation(request.design()).panels();
        List<EnclosedHeat> heats = new ArrayList<>();
        for (int k = 0; k < enclosures.size(); k++) {
            Enclosure enclosure = enclosures.get(k);
            List<HeatSource> sources = new ArrayList<>();
            run.controlPower().supplies().stream()
                    .filter(supply -> supply.place().equals(enclosure.place()))
                    .forEach(supply -> sources.add(new HeatSource(supply.id(), supply.heat())));
            run.topology().gateways().stream()
                    .filter(gateway -> gateway.place().equals(enclosure.place()))
                    .forEach(gateway -> sources.add(new HeatSource(
                            gateway.id(),
                            stock.get(GatewayType.class, gateway.gatewayType()).ownPower())));
            for (AxisDuty axis : run.duty().axes()) {
                DriveUnit unit = stock.find(DriveUnit.class, axis.driveUnit());
                if (unit != null && enclosure.axes().contains(axis.axis())) {
                    sources.add(new HeatSource(axis.axis(), electronics(unit, axis)));
                }
            }
            List<String> unknown = new ArrayList<>();
            if (enclosure.place().equals(placeOfTransformers(request))) {
                run.supply().transformers().forEach(transformer -> add(transformer, sources, unknown));
            }
            Power other = enclosure.otherLosses();
            if (other != null) {
                sources.add(new HeatSource("other", other));
            }
            heats.add(new EnclosedHeat(
                    "/design/installation/enclosures/" + k, enclosure, List.copyOf(sources), List.copyOf(unknown)));
        }
        return new EnclosureRequest(request.design().site(), List.copyOf(heats));
    }

    private static void add(TransformerNeed transformer, List<HeatSource> sources, List<String> unknown) {
        Power loss = transformer.loss();
        if (loss == null) {
            unknown.add(transformer.id());
        } else {
            sources.add(new HeatSource(transformer.id(), loss));
        }
    }

    private static @Nullable String placeOfTransformers(StudyRequest request) {
        Transformers transformers = Needed.installation(request.design()).transformers();
        return transformers == null ? null : transformers.place();
    }

    /** What the power electronics of an axis lose over its cycle, by load where the catalogue states that. */
    private static Power electronics(DriveUnit unit, AxisDuty axis) {
        return unit.loadLoss(axis.figures().rmsTorque())
                .map(byLoad -> new Power(unit.standbyLoss().si() + byLoad.si()))
                .orElse(unit.standbyLoss());
    }
}
