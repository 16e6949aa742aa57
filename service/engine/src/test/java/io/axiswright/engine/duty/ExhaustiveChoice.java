package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.VentilationKit;
import io.axiswright.engine.design.DriveSelection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Every limit of every candidate worked out, then all sorted; what the choice by bounds must agree with. */
public final class ExhaustiveChoice {

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

    ExhaustiveChoice(List<GearedLoad> ways, List<Offer> offers, DriveSelection selection, BrakeStock brakes) {
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

    /** The winner, or the nearest miss. */
    Tried best() {
        if (!holding.isEmpty()) {
            return holding.getFirst();
        }
        return broken.stream()
                .min(Comparator.comparingDouble(
                        tried -> tried.highest() + (tried.broken() == DutyLimit.FEED ? DutyLimit.HIGHEST_USE : 0)))
                .orElseThrow();
    }

    /** The misses that came through most limits, nearest first. */
    List<Tried> nearest() {
        Comparator<Tried> far = Comparator.comparingInt(tried -> -broken(tried).ordinal());
        return broken.stream()
                .sorted(far.thenComparingDouble(
                        tried -> tried.uses[broken(tried).ordinal()]))
                .limit(20)
                .toList();
    }

    private static DutyLimit broken(Tried tried) {
        DutyLimit limit = tried.broken();
        if (limit == null) {
            throw new IllegalStateException(tried.name());
        }
        return limit;
    }

    private static int amount(Item item) {
        return item.price() == null ? 0 : item.price().amount().intValueExact();
    }
}
