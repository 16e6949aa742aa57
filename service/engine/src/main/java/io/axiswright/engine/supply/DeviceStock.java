package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.graph.NaturalOrder;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.Limits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The protective devices that come into question at all, and the choice among them: the next rating up, then price. */
final class DeviceStock {

    private static final Comparator<ProtectiveDevice> NEXT_RATING_THEN_PRICE = Comparator.comparingDouble(
                    (ProtectiveDevice d) -> d.rating().si())
            .thenComparing(DeviceStock::amount, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(ProtectiveDevice::id, NaturalOrder.OF_NAMES);

    private final CodeBasis basis;
    private final DeviceKind kind;
    private final Current fault;
    private final List<ProtectiveDevice> devices;

    DeviceStock(SupplyRequest request) {
        this.basis = request.codeBasis();
        this.kind = request.installation().device();
        this.fault = request.mains().prospectiveFaultCurrent();
        this.devices = request.devices().stream()
                .filter(d -> d.kind() == kind && d.codeBasis() == basis)
                .sorted(NEXT_RATING_THEN_PRICE)
                .toList();
    }

    /**
     * What a circuit asks of its device.
     *
     * @param poles poles
     * @param voltage nominal voltage
     * @param atLeast least rating, in A
     * @param atMost highest rating, in A
     * @param inrush peak at which it should not trip, in A; 0 where none is known
     */
    record Ask(int poles, Voltage voltage, double atLeast, double atMost, double inrush) {

        /** The same with a least rating that is not below the given one. */
        Ask atLeast(double rating) {
            return new Ask(poles, voltage, Math.max(atLeast, rating), atMost, inrush);
        }
    }

    /**
     * The device that serves: the smallest rating in the window, the cheapest of that rating; among those that bear the inrush
     * where any does.
     */
    Optional<ProtectiveDevice> pick(Ask ask) {
        Optional<ProtectiveDevice> bearing = ask.inrush() == 0 ? Optional.empty() : bearing(ask);
        return bearing.or(() -> fitting(ask).filter(this::clearsFault).findFirst());
    }

    /** Whether a device serves that bears the inrush. */
    boolean holds(Ask ask) {
        return bearing(ask).isPresent();
    }

    private Optional<ProtectiveDevice> bearing(Ask ask) {
        return fitting(ask)
                .filter(this::clearsFault)
                .filter(device -> bears(device, ask.inrush()))
                .findFirst();
    }

    /** The device with the highest interrupting rating among those that would serve but for the fault current. */
    Optional<ProtectiveDevice> strongest(Ask ask) {
        return fitting(ask)
                .max(Comparator.comparingDouble(d -> d.interruptingRating().si()));
    }

    /** The smallest standard rating that is not below what is asked, whether the catalogue has it or not. */
    Optional<Current> standardRating(Ask ask) {
        return DeviceRatings.nextUp(basis, kind, new Current(ask.atLeast()))
                .map(sourced -> sourced.value())
                .filter(rating -> Limits.within(rating.si(), ask.atMost()));
    }

    /** The largest standard rating there is. */
    Current largestStandard() {
        return DeviceRatings.of(basis, kind).getLast().value();
    }

    /** Whether a device could protect the circuit; by the standard ratings where the catalogue has none of the sort. */
    boolean couldServe(Ask ask) {
        var any = new Ask(ask.poles(), ask.voltage(), 0, Double.POSITIVE_INFINITY, 0);
        return pick(any).isPresent()
                ? pick(ask).isPresent()
                : standardRating(ask).isPresent();
    }

    /** What such a device is called. */
    String describe(Ask ask) {
        String volts = new BigDecimal(ask.voltage().si())
                .setScale(0, RoundingMode.HALF_UP)
                .toPlainString();
        return ask.poles() + "-pole " + (kind == DeviceKind.FUSE ? "fuse" : "circuit-breaker") + " for " + volts + " V";
    }

    private Stream<ProtectiveDevice> fitting(Ask ask) {
        return devices.stream()
                .filter(d -> d.poles() == ask.poles())
                .filter(d -> Limits.within(ask.voltage().si(), d.ratedVoltage().si()))
                .filter(d -> Limits.within(ask.atLeast(), d.rating().si()))
                .filter(d -> Limits.within(d.rating().si(), ask.atMost()));
    }

    private static boolean bears(ProtectiveDevice device, double peak) {
        var tolerated = device.toleratedPeak();
        return tolerated != null && peak < tolerated.si();
    }

    private boolean clearsFault(ProtectiveDevice device) {
        return Limits.within(fault.si(), device.interruptingRating().si());
    }

    private static @Nullable BigDecimal amount(ProtectiveDevice device) {
        var price = device.price();
        return price == null ? null : price.amount();
    }
}
