package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The holding brakes on offer, by frame size, cheapest first. */
final class BrakeStock {

    /** Cheapest first; what has no price comes last. */
    static final Comparator<@Nullable Money> BY_PRICE =
            Comparator.nullsLast(Comparator.comparing(Money::amount, BigDecimal::compareTo));

    private final Map<String, List<HoldingBrake>> byFrame = new HashMap<>();

    BrakeStock(List<HoldingBrake> brakes) {
        Comparator<HoldingBrake> cheapest = Comparator.comparing(Item::price, BY_PRICE);
        brakes.stream()
                .sorted(cheapest.thenComparingDouble(brake -> brake.torque().si()))
                .forEach(brake -> byFrame.computeIfAbsent(brake.frameSize(), frame -> new ArrayList<>())
                        .add(brake));
    }

    /** Where the margin of a holding brake comes from. */
    static String clause(DriveSelection drive) {
        return drive.brakeMargin() == null
                ? "common practice, no source: 1.5 times the torque to be held"
                : "margin stated with the axis (drive.brakeMargin)";
    }

    /** The cheapest brake of a frame size that holds the load and surely stops it; the cheapest that holds it if none surely does. */
    @Nullable
    HoldingBrake cheapest(String frameSize, BrakeNeed need) {
        HoldingBrake holding = null;
        for (HoldingBrake brake : of(frameSize)) {
            if (need.heldBy(brake)) {
                if (need.stoppedBy(brake)) {
                    return brake;
                }
                holding = holding == null ? brake : holding;
            }
        }
        return holding;
    }

    /** The torque of the strongest brake of a frame size, N·m; 0 if there is none. */
    double strongest(String frameSize) {
        return of(frameSize).stream()
                .mapToDouble(brake -> brake.torque().si())
                .max()
                .orElse(0);
    }

    private List<HoldingBrake> of(String frameSize) {
        return byFrame.getOrDefault(frameSize, List.of());
    }
}
