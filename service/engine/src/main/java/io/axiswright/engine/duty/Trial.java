package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.Torque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One drive unit tried on one axis; each limit is worked out once, and only if somebody asks. */
final class Trial {

    private final GearedLoad way;
    private final AxisLoad load;
    private final LoadSums sums;
    private final Offer offer;
    private final DriveSelection selection;
    private final double brakeTorque;
    private final double strongestBrake;
    private final @Nullable HoldingBrake brake;
    private final double inertia;
    private final double rmsTorque;
    private double courseBound = Double.NaN;
    private double courseSampled = Double.NaN;
    private @Nullable Envelope envelope;
    private @Nullable WindingHeat heat;
    private @Nullable Optional<StopUse> hardestStop;

    Trial(GearedLoad way, Offer offer, DriveSelection selection, BrakeStock brakes) {
        this.way = way;
        load = way.load();
        sums = way.sums();
        this.offer = offer;
        this.selection = selection;
        DriveUnit unit = offer.unit();
        brakeTorque = selection.holdingBrake() ? selection.holdingMargin() * load.holdingTorque() : 0;
        double alone = load.addedInertia() + unit.rotorInertia().si();
        brake = selection.holdingBrake()
                ? brakes.cheapest(
                        unit.frameSize(),
                        new BrakeNeed(
                                brakeTorque, load.holdingTorque(), load.reflectedInertia() + alone, sums.peakSpeed()))
                : null;
        strongestBrake = brake != null ? brake.torque().si() : brakes.strongest(unit.frameSize());
        inertia = alone + (brake == null ? 0 : brake.inertia().si());
        rmsTorque = sums.rmsTorque(inertia);
    }

    GearedLoad way() {
        return way;
    }

    Offer offer() {
        return offer;
    }

    @Nullable
    HoldingBrake brake() {
        return brake;
    }

    /** What turns with the motor: rotor, brake, coupling and the gear's input, kg·m². */
    double inertia() {
        return inertia;
    }

    /** Reflected inertia over that of rotor, brake and coupling. */
    double inertiaRatio() {
        return load.reflectedInertia() / (inertia - load.drivetrain().gearInertia());
    }

    /** Whether its control is tuned for such a load. */
    boolean tunable() {
        return inertiaRatio() <= offer.unit().inertiaRatioLimit();
    }

    double rmsTorque() {
        return rmsTorque;
    }

    boolean brakeAsked() {
        return selection.holdingBrake();
    }

    /** Torque the holding brake must have, margin included, N·m. */
    double brakeTorque() {
        return brakeTorque;
    }

    /** Torque of the brake chosen, or of the strongest that fits the frame if none is strong enough, N·m. */
    double strongestBrake() {
        return strongestBrake;
    }

    /** How much of a limit the axis uses; none of what the mechanism bears, for that is no matter of the drive unit. */
    double use(DutyLimit limit, @Nullable VentilationKit kit) {
        return switch (limit) {
            case FEED -> canBeFed() ? DutyLimit.use(offer.voltage(), offer.highestVoltage()) : DutyLimit.HIGHEST_USE;
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK, GEAR_STOP -> way.use(limit);
            case SPEED -> DutyLimit.use(sums.peakSpeed(), offer.intermittent().topSpeed());
            case BRAKE -> brakeUse();
            case CONTINUOUS ->
                fasterThanContinuous()
                        ? DutyLimit.use(sums.rmsSpeed(), offer.continuous().topSpeed())
                        : DutyLimit.use(rmsTorque, continuousTorque(kit));
            case INTERMITTENT -> envelope().use();
            case WINDING -> DutyLimit.use(heat(kit).rise(), permittedRise());
            case MECHANISM -> 0;
        };
    }

    /** Whether the rms speed lies beyond the continuous curve, so that speed and not torque is what breaks there. */
    boolean fasterThanContinuous() {
        return DutyLimit.broken(
                DutyLimit.use(sums.rmsSpeed(), offer.continuous().topSpeed()));
    }

    /**
     * How many times as much the drive unit or what goes with it would have to have of what a limit is about; for curves how
     * many times larger they would have to be. 0 for what is a matter of yes or no.
     *
     * @param sofar what is known of another limit; anything below it may come back for less than that
     */
    double shortfall(DutyLimit limit, @Nullable VentilationKit kit, double sofar) {
        return switch (limit) {
            case FEED, MECHANISM -> 0;
            case GEAR_SPEED, GEAR_NOMINAL, GEAR_PEAK, GEAR_STOP, SPEED, BRAKE -> use(limit, kit);
            case CONTINUOUS ->
                continuousEnlargement(
                        kit, rmsTorque, Math.min(offer.electronicsShare(), Math.sqrt(offer.permittedShare())));
            case INTERMITTENT -> offer.intermittent().enlargement().over(load.pieces(), inertia, sofar);
            case WINDING -> {
                if (offer.unit().stallTorque() != null) {
                    // all torques larger by k, standstill's among them, lower every rise by k²
                    yield Math.max(
                            Math.sqrt(use(limit, kit)),
                            windingEnlargement(kit, Math.sqrt(heatPerRise().rise())));
                }
                HeatPath path = HeatPath.of(offer.unit());
                double bound = Math.sqrt(path.bound(rmsTorque * rmsTorque, load.period()));
                yield windingEnlargement(kit, bound) <= sofar
                        ? 0
                        : windingEnlargement(kit, Math.sqrt(heatPerRise().rise()));
            }
        };
    }

    /** A lower bound of {@link #shortfall} for the intermittent curve, from a few instants. */
    double sampledShortfall() {
        return way.samples().enlargement(inertia, offer.intermittent().enlargement());
    }

    private double windingEnlargement(@Nullable VentilationKit kit, double torque) {
        return continuousEnlargement(kit, torque, Math.sqrt(offer.permittedShare()));
    }

    private double continuousEnlargement(@Nullable VentilationKit kit, double torque, double share) {
        double factor = share * (kit == null ? 1 : kit.continuousTorqueFactor());
        return offer.continuous().enlargement().at(sums.rmsSpeed(), torque / factor);
    }

    /** Whether a limit is broken; what is dear to find is found only if need be. */
    boolean breaks(DutyLimit limit, @Nullable VentilationKit kit) {
        return limit == DutyLimit.GEAR_STOP ? way.breaksInStop() : DutyLimit.broken(use(limit, kit));
    }

    /** An upper bound of the use of the winding, at no cost. */
    double windingBound(@Nullable VentilationKit kit) {
        double mean = risePerTorqueSquared(kit) * rmsTorque * rmsTorque;
        var bound = new WindingHeat(HeatPath.of(offer.unit()).bound(mean, load.period()), 0);
        Torque stall = offer.unit().stallTorque();
        WindingHeat hottest = stall == null ? bound : withStandstill(bound, stall.si(), kit);
        return DutyLimit.use(hottest.rise(), permittedRise());
    }

    /** A lower bound of the use of the winding: its highest rise is no less than its mean. */
    double windingMean(@Nullable VentilationKit kit) {
        return DutyLimit.use(risePerTorqueSquared(kit) * rmsTorque * rmsTorque, permittedRise());
    }

    /** An upper bound of the use of the intermittent curve: the hardest torque of each piece against the least available. */
    double courseBound() {
        if (Double.isNaN(courseBound)) {
            courseBound = Envelope.bound(load.pieces(), inertia, offer.intermittent());
        }
        return courseBound;
    }

    /** A lower bound of the use of the intermittent curve, from a few instants. */
    double courseSampled() {
        if (Double.isNaN(courseSampled)) {
            courseSampled = envelope != null ? envelope.use() : way.samples().use(inertia, offer.intermittent());
        }
        return courseSampled;
    }

    /** Whether mains and wish allow its feed at all. */
    boolean canBeFed() {
        return offer.voltage() > 0 && wanted(offer.unit().feed());
    }

    /** A unit on a DC bus needs something that feeds the bus, so it is taken only where the caller asks for it. */
    private boolean wanted(Feed feed) {
        if (selection.feed() != null) {
            return selection.feed() == feed;
        }
        return feed != Feed.DC_BUS || selection.item() != null;
    }

    /** The continuous curve at the rms speed, at this site, with that kit, N·m. */
    double continuousTorque(@Nullable VentilationKit kit) {
        return ratedTorque(kit) * Math.min(offer.electronicsShare(), Math.sqrt(offer.permittedShare()));
    }

    /** The continuous curve at the rms speed, at the rated conditions, with that kit, N·m. */
    double ratedTorque(@Nullable VentilationKit kit) {
        return offer.continuous().at(sums.rmsSpeed()) * (kit == null ? 1 : kit.continuousTorqueFactor());
    }

    /** How long a torque can be held from cold until the winding is at its limit, s; infinite if for ever. */
    double timeFromCold(double torque, @Nullable VentilationKit kit) {
        return HeatPath.of(offer.unit()).timeTo(permittedRise(), risePerTorqueSquared(kit) * torque * torque);
    }

    /** The temperature rise the winding may have, K. */
    double permittedRise() {
        return offer.unit().ratedRise().si() * offer.permittedShare();
    }

    Envelope envelope() {
        if (envelope == null) {
            envelope = Envelope.worst(load.pieces(), inertia, offer.intermittent());
        }
        return envelope;
    }

    /** The controlled stop that uses most of the intermittent curve at low line; none if it makes no stop. */
    @Nullable
    LimitUse hardestStop() {
        StopUse stop = stopUse();
        return stop == null ? null : stop.limit();
    }

    /** The same with its course. */
    @Nullable
    StopUse stopUse() {
        if (hardestStop == null) {
            hardestStop = Optional.ofNullable(searchHardestStop());
        }
        return hardestStop.orElse(null);
    }

    private @Nullable StopUse searchHardestStop() {
        TorqueCurve curve = offer.intermittent();
        HardestStop hardest = HardestStop.of(load, sums.peakSpeed(), inertia, way.zone(), new StopMeasure(curve));
        return hardest.size() == 0 ? null : new StopUse(hardest, Envelope.worst(hardest.course(), curve));
    }

    /** Whether it can make every controlled stop of its zone. */
    boolean stops() {
        LimitUse stop = hardestStop();
        return stop == null || !stop.broken();
    }

    /**
     * The hottest instant of the winding with that kit, its hottest phase where the torque that it holds at standstill is stated. A rise
     * goes with its cause, so one run serves all kits.
     */
    WindingHeat heat(@Nullable VentilationKit kit) {
        WindingHeat perRise = heatPerRise();
        var even = new WindingHeat(perRise.rise() * risePerTorqueSquared(kit), perRise.instant());
        Torque stall = offer.unit().stallTorque();
        return stall == null ? even : withStandstill(even, stall.si(), kit);
    }

    /** The same where the hottest phase holds that torque at standstill, at the rated conditions without kit, N·m. */
    WindingHeat withStandstill(WindingHeat even, double stallTorque, @Nullable VentilationKit kit) {
        HeatPath.Body winding = HeatPath.of(offer.unit()).bodies().getFirst();
        double still = stallTorque * (kit == null ? 1 : kit.continuousTorqueFactor());
        double more = offer.unit().ratedRise().si() / (still * still) - risePerTorqueSquared(kit);
        WindingHeat hottest = even;
        for (Hold hold : way.holds()) {
            double rise = even.rise() + hold.extraRise(more, winding);
            hottest = rise > hottest.rise() ? new WindingHeat(rise, hold.end()) : hottest;
        }
        return hottest;
    }

    /** The same for a steady rise of 1 K per (N·m)²: the torque squared as the winding feels it. */
    private WindingHeat heatPerRise() {
        if (heat == null) {
            heat = WindingHeat.highest(load.pieces(), inertia, 1, HeatPath.of(offer.unit()));
        }
        return heat;
    }

    /**
     * The steady rise of the winding per torque squared, K/(N·m)²: the continuous curve at the rms speed is what heats it
     * to its rated rise, so loss (T/Km)² and thermal resistance ratedRise/(Tc/Km)² need no Km. Held to the largest finite
     * use where the curve has no torque left.
     */
    private double risePerTorqueSquared(@Nullable VentilationKit kit) {
        double least = rmsTorque / DutyLimit.HIGHEST_USE;
        double rated = Math.max(ratedTorque(kit), least);
        return rated == 0 ? 0 : offer.unit().ratedRise().si() / (rated * rated);
    }

    private double brakeUse() {
        if (!selection.holdingBrake()) {
            return 0;
        }
        return strongestBrake == 0 ? DutyLimit.HIGHEST_USE : DutyLimit.use(brakeTorque, strongestBrake);
    }
}
