package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Feed;
import java.util.List;

/**
 * A drive unit as it is worth at this site and on these mains, whatever the axis.
 *
 * @param unit the drive unit
 * @param voltage nominal voltage it gets, V; 0 if it cannot be fed
 * @param lineFactor lowest voltage it gets over its rated voltage, at most 1
 * @param permittedShare share of its rated temperature rise that is permitted
 * @param thinAir share of the rise at sea level that the thinner air of the site leaves
 * @param electronicsShare share of their current that its electronics have at the altitude of the site
 * @param ambient ambient temperature of the site, K
 * @param intermittent its intermittent curve at low line and that altitude
 * @param continuous its continuous curve at the rated conditions
 * @param kits the ventilation kits that fit it and can be fed
 */
record Offer(
        DriveUnit unit,
        double voltage,
        double lineFactor,
        double permittedShare,
        double thinAir,
        double electronicsShare,
        double ambient,
        TorqueCurve intermittent,
        TorqueCurve continuous,
        List<VentilationKit> kits) {

    /** Every drive unit of a request as the mains feed it, in its order. */
    static List<Offer> onMains(DutyRequest request) {
        return all(request, (feed, rated) -> FeedRule.voltage(request.mains(), feed, rated));
    }

    /** Every drive unit of a request as a transformer made for it feeds it. */
    static List<Offer> behindTransformer(DutyRequest request) {
        return all(request, (feed, rated) -> FeedRule.transformed(request.mains(), feed, rated));
    }

    /** The nominal voltage, in V, that reaches a device of a feed and a rated voltage; 0 if none does. */
    private interface Source {
        double voltage(Feed feed, double rated);
    }

    private static List<Offer> all(DutyRequest request, Source source) {
        return request.driveUnits().stream()
                .map(unit -> of(unit, request, source))
                .toList();
    }

    /** Copper loss per torque squared, W/(N·m)². */
    double lossPerTorqueSquared() {
        double constant = unit.motorConstant().si();
        return 1 / (constant * constant);
    }

    /** Electrical input at the most powerful point of the continuous curve, W. */
    double ratedInput() {
        return continuous.highestPower(lossPerTorqueSquared())
                + unit.standbyLoss().si();
    }

    /** Highest voltage it stands, V. */
    double highestVoltage() {
        return FeedRule.HIGHEST * unit.ratedVoltage().si();
    }

    /**
     * A rectified bus follows the line, and the speed at which a voltage limits torque follows the bus: all speeds of the
     * intermittent curve are scaled by the line factor (duty-cycle handbooks; derived from E = Ke·w).
     */
    private static Offer of(DriveUnit unit, DutyRequest request, Source source) {
        double rated = unit.ratedVoltage().si();
        double voltage = source.voltage(unit.feed(), rated);
        double low = voltage * (1 - request.mains().lowTolerance());
        double lineFactor = voltage == 0 ? 1 : Math.min(1, low / rated);
        List<VentilationKit> kits = request.ventilationKits().stream()
                .filter(kit -> kit.frameSize().equals(unit.frameSize()))
                .filter(kit -> feedable(kit, source))
                .toList();
        double electronicsShare = Derating.electronicsShare(unit, request.site());
        return new Offer(
                unit,
                voltage,
                lineFactor,
                Derating.permittedShare(unit, request.site()),
                Derating.thinAir(request.site()),
                electronicsShare,
                request.site().ambient().si(),
                TorqueCurve.of(unit.intermittentCurve(), lineFactor, electronicsShare),
                TorqueCurve.of(unit.continuousCurve(), 1),
                kits);
    }

    private static boolean feedable(VentilationKit kit, Source source) {
        double rated = kit.ratedVoltage().si();
        double voltage = source.voltage(kit.feed(), rated);
        return voltage > 0 && voltage <= FeedRule.HIGHEST * rated;
    }
}
