package io.axiswright.load;

import io.axiswright.engine.bill.BillMaking;
import io.axiswright.engine.bill.BillRequest;
import io.axiswright.engine.bill.Connections;
import io.axiswright.engine.bill.Demand;
import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.wiring.WiringResult;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether a bill of ten thousand lines costs no more a line than one of an eighth of them, side by side in one run. */
final class BillScaling {

    private static final int FEW = 1_250;
    private static final int MANY = 10_000;
    private static final int ROUNDS = 80;

    /** Lines of one demand: its item, what that needs, what those need. */
    private static final int FAMILY = 10;

    /** Above proportion: what sorting the lines and caches may cost. */
    private static final double SLACK = 1.125;

    /** The long run is put off the processor more often than the short one where others work too, so time on it is what counts. */
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private BillScaling() {}

    @SuppressWarnings("SystemOut") // a report for the terminal
    static boolean holds() {
        BillRequest few = request(FEW);
        BillRequest many = request(MANY);
        double timeOfFew = Double.POSITIVE_INFINITY;
        double timeOfMany = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            timeOfFew = Math.min(timeOfFew, milliseconds(few, FEW));
            timeOfMany = Math.min(timeOfMany, milliseconds(many, MANY));
        }
        double grown = timeOfMany / timeOfFew;
        double allowed = SLACK * MANY / FEW;
        System.out.printf(
                "bill: %d lines %.2f ms, %d lines %.2f ms: %.1f times, at most %.1f%n",
                FEW, timeOfFew, MANY, timeOfMany, grown, allowed);
        return grown <= allowed;
    }

    private static double milliseconds(BillRequest request, int lines) {
        long start = THREADS.getCurrentThreadCpuTime();
        var bill = new BillMaking().make(request);
        double time = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
        if (bill.required().lines().size() != lines || !bill.closing().closes()) {
            throw new IllegalStateException("the bill has not all its lines");
        }
        return time;
    }

    /** Families of ten items: the first needs three, each of which needs two more. */
    private static BillRequest request(int lines) {
        List<Accessory> items = new ArrayList<>();
        List<Demand> demands = new ArrayList<>();
        for (int family = 0; family < lines / FAMILY; family++) {
            for (int member = 0; member < FAMILY; member++) {
                items.add(item(family, member));
            }
            demands.add(new Demand(
                    id(family, 0),
                    BigDecimal.TWO,
                    NeedKind.REQUIRED,
                    "axis " + family,
                    "moves the axis",
                    "/design/axes/" + family,
                    List.of()));
        }
        return new BillRequest(
                catalogue(items),
                CatalogueSource.SENT,
                demands,
                List.of(),
                false,
                List.of(),
                List.of(),
                List.of(),
                new Connections(List.of(), Set.of(), List.of()),
                new WiringResult(List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    private static Accessory item(int family, int member) {
        int first = member == 0 ? 1 : 2 * member + 2;
        int count = member == 0 ? 3 : member <= 3 ? 2 : 0;
        return new Accessory(
                id(family, member),
                "accessory",
                new Money(new BigDecimal("12.50"), "EUR"),
                IntStream.range(first, first + count)
                        .mapToObj(needed -> new Need(id(family, needed), 1.5, NeedKind.REQUIRED, null, "goes with it"))
                        .toList());
    }

    private static String id(int family, int member) {
        return "item-" + family + "-" + member;
    }

    private static Catalogue catalogue(List<Accessory> items) {
        return new Catalogue(
                "bill", "EUR", null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), items);
    }
}
