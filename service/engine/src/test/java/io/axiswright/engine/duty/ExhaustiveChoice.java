package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.CurvePoint;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.DriveSelection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Every limit of every candidate worked out, then all sorted; what the choice by bounds must agree with. */
public final class ExhaustiveChoice {

    /** In so many parts each stretch of motion is looked at, its ends among them. */
    private static final int INSTANTS = 50;

    /** A candidate with the uses of all limits. */
    record Tried(Trial trial, @Nullable VentilationKit kit, double[] uses, int price) {

        @Nullable
        DutyLimit broken() {
            for (DutyLimit limit : DutyLimit.values()) {
                if (DutyLimit.broken(uses[limit.ordinal()])) {
                    return limit;
                }
            }
            return null;
        }

        double highest() {
            double highest = 0;
            for (DutyLimit limit : DutyLimit.values()) {
                // a voltage suits or does not: the mains are no margin
                highest = limit == DutyLimit.FEED ? highest : Math.max(highest, uses[limit.ordinal()]);
            }
            return highest;
        }

        String name() {
            String gear = trial.way().gear() == null ? "-" : trial.way().gear().id();
            return trial.offer().unit().id() + " " + gear + " " + (kit == null ? "-" : kit.id());
        }
    }

    final List<Tried> holding = new ArrayList<>();
    final List<Tried> broken = new ArrayList<>();

    private final Axis axis;
    private final Map<GearedLoad, List<Instant>> instants = new IdentityHashMap<>();

    ExhaustiveChoice(Axis axis, List<GearedLoad> ways, List<Offer> offers, BrakeStock brakes) {
        this.axis = axis;
        DriveSelection selection = axis.drive();
        for (GearedLoad way : ways) {
            for (Offer offer : offers) {
                if (way.gear() == null
                        || way.gear().frameSizes().contains(offer.unit().frameSize())) {
                    Trial trial = new Trial(way, offer, selection, brakes);
                    add(trial, null);
                    if (selection.forcedVentilationAllowed()) {
                        offer.kits().forEach(kit -> add(trial, kit));
                    }
                }
            }
        }
        Comparator<Tried> tuned = Comparator.comparing(tried -> !tried.trial.tunable());
        holding.sort(tuned.thenComparingInt(Tried::price).thenComparingDouble(Tried::highest));
    }

    private void add(Trial trial, @Nullable VentilationKit kit) {
        double[] uses = new double[DutyLimit.values().length];
        for (DutyLimit limit : DutyLimit.values()) {
            uses[limit.ordinal()] = trial.use(limit, kit);
        }
        int price = amount(trial.offer().unit())
                + (kit == null ? 0 : amount(kit))
                + (trial.way().gear() == null ? 0 : amount(trial.way().gear()))
                + (trial.brake() == null ? 0 : amount(trial.brake()));
        Tried tried = new Tried(trial, kit, uses, price);
        (tried.broken() == null ? holding : broken).add(tried);
    }

    /** The winner. */
    Tried best() {
        return holding.getFirst();
    }

    /**
     * How many times as much a miss would have to have of what it lacks most, by its own definition: the least factor by which
     * torques and speeds of its curves have to be multiplied for all instants looked at to lie on them, found by halving; plain
     * shares for all other limits. Too low by what happens between two instants.
     */
    double shortfall(Tried tried) {
        double most = 1;
        for (DutyLimit limit : DutyLimit.values()) {
            boolean ofCurve =
                    limit == DutyLimit.CONTINUOUS || limit == DutyLimit.INTERMITTENT || limit == DutyLimit.WINDING;
            if (!ofCurve && limit != DutyLimit.FEED) {
                most = Math.max(most, tried.uses[limit.ordinal()]);
            }
        }
        double low = most;
        double high = DutyLimit.HIGHEST_USE;
        while (high - low > 1e-6 * low) {
            double middle = (low + high) / 2;
            if (holdsEnlarged(tried, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high + (tried.broken() == DutyLimit.FEED ? DutyLimit.HIGHEST_USE : 0);
    }

    private boolean holdsEnlarged(Tried tried, double factor) {
        Trial trial = tried.trial;
        Offer offer = trial.offer();
        List<CurvePoint> rated = offer.unit().continuousCurve();
        double rms = trial.way().sums().rmsSpeed();
        double fan = tried.kit == null ? 1 : tried.kit.continuousTorqueFactor();
        double continuous = factor * fan * torque(rated, 1, rms / factor);
        double hot = trial.heat(tried.kit).rise() * Math.pow(trial.ratedTorque(tried.kit) / continuous, 2);
        boolean cool =
                trial.rmsTorque() <= continuous * Math.sqrt(offer.permittedShare()) && hot <= trial.permittedRise();
        return cool
                && instants.computeIfAbsent(trial.way(), way -> instants(way.geared(axis), way.load())).stream()
                        .allMatch(instant -> {
                            double available = torque(
                                    offer.unit().intermittentCurve(), offer.lineFactor(), instant.speed / factor);
                            return Math.abs(instant.torque + trial.inertia() * instant.acceleration)
                                    <= factor * available;
                        });
    }

    /** The torque of a catalogue's curve; none beyond its end. */
    private static double torque(List<CurvePoint> points, double speedFactor, double speed) {
        for (int k = 1; k < points.size(); k++) {
            double from = points.get(k - 1).speed().si() * speedFactor;
            double to = points.get(k).speed().si() * speedFactor;
            if (speed <= to) {
                double share = (speed - from) / (to - from);
                return (1 - share) * points.get(k - 1).torque().si()
                        + share * points.get(k).torque().si();
            }
        }
        return 0;
    }

    /** Speed, torque without the motor's inertia and acceleration at one instant. */
    private record Instant(double speed, double torque, double acceleration) {}

    private static List<Instant> instants(Axis axis, AxisLoad load) {
        double[] times = load.pieces().stream()
                .flatMapToDouble(piece -> IntStream.rangeClosed(0, INSTANTS)
                        .mapToDouble(k -> Math.clamp((double) k / INSTANTS, 1e-7, 1 - 1e-7))
                        .map(share -> piece.start() + share * piece.duration()))
                .toArray();
        TorqueOracle bare = new TorqueOracle(axis, 0);
        TorqueOracle heavier = new TorqueOracle(axis, 1);
        List<Instant> instants = new ArrayList<>();
        for (double time : times) {
            TorqueOracle.State state = bare.at(time);
            double acceleration = heavier.at(time).torque() - state.torque();
            instants.add(new Instant(Math.abs(state.speed()), state.torque(), acceleration));
        }
        return instants;
    }

    private static int amount(Item item) {
        return item.price() == null ? 0 : item.price().amount().intValueExact();
    }
}
