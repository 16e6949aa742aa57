package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.Limits;
import java.util.List;
import java.util.Optional;

/**
 * That a fault on one branch circuit leaves the others fed. A feeder device below a branch device would trip first; of fuses gG
 * the ratio of their ratings tells which blows alone; of other devices the ratings do not tell.
 */
final class FeederSelectivity {

    private final boolean byRatio;
    private final Rule.Entry ratio;
    private final FeederPlace place;
    private final List<BranchCircuit> circuits;

    FeederSelectivity(SupplyRequest request, FeederPlace place, List<BranchCircuit> circuits) {
        this.place = place;
        this.byRatio = request.codeBasis() == CodeBasis.IEC_60204_1
                && request.installation().device() == DeviceKind.FUSE;
        this.ratio = Rule.FUSE_SELECTIVITY_RATIO.under(request.codeBasis());
        this.circuits = circuits;
    }

    /** The largest branch device, in A; 0 if none is known. */
    double largestDevice() {
        return circuits.stream()
                .map(BranchCircuit::deviceRating)
                .mapToDouble(rating -> rating == null ? 0 : rating.si())
                .max()
                .orElse(0);
    }

    /** The least rating of a feeder device that leaves the other circuits fed, as far as the ratings tell, in A. */
    double atLeast() {
        return byRatio && circuits.size() > 1 ? ratio.value() * largestDevice() : largestDevice();
    }

    Optional<Derivation> derivation() {
        return byRatio && circuits.size() > 1
                ? Optional.of(new Derivation(
                        place.id(),
                        "I_n,min",
                        "k I_n,branch",
                        Derivation.inputs("k", new Ratio(ratio.value()), "I_n,branch", new Current(largestDevice())),
                        ratio.clause(),
                        new Current(atLeast())))
                : Optional.empty();
    }

    /** Where the ratings do not tell which of two devices in line trips. */
    Optional<Finding> finding(Feeder feeder) {
        var device = feeder.deviceRating();
        boolean told = byRatio && device != null && Limits.within(atLeast(), device.si());
        return circuits.size() < 2 || device == null || told
                ? Optional.empty()
                : Optional.of(FindingCode.SUPPLY_FEEDER_SELECTIVITY.at(
                        place.subject(),
                        place.pointer(),
                        byRatio ? ratio.clause() : "common practice, no source",
                        device,
                        new Current(largestDevice())));
    }
}
