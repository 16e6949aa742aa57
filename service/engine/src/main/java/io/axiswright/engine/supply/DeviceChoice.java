package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Chooses protective devices and says, where none serves, what is missing. */
final class DeviceChoice {

    private static final String COORDINATION = "NFPA 70 240.6(A), 430.130; IEC 60364-4-43 433.1 (from memory)";

    static final String INRUSH =
            "derived: peak of the lower edge of the instantaneous band (IEC 60898-1), all loads switched on together";

    /**
     * A device.
     *
     * @param device item id; absent if none serves
     * @param rating its rating, or the standard one it would need; absent if there is neither
     * @param inrush what it meets when its loads are switched on; absent if none of them states it
     */
    record Choice(
            @Nullable String device,
            @Nullable Current rating,
            @Nullable Inrush inrush) {

        static final Choice NONE = new Choice(null, null, null);
    }

    private final DeviceStock stock;
    private final Current fault;
    private final List<Finding> findings = new ArrayList<>();

    DeviceChoice(DeviceStock stock, Current fault) {
        this.stock = stock;
        this.fault = fault;
    }

    /** What was missing so far. */
    List<Finding> findings() {
        return findings;
    }

    /** Whether the catalogue has a device for a circuit. */
    boolean serves(DeviceStock.Ask ask) {
        return stock.pick(ask).isPresent();
    }

    /** The device for a circuit. */
    Choice choose(String subject, String pointer, DeviceStock.Ask ask) {
        var device = stock.pick(ask);
        if (device.isPresent()) {
            return new Choice(device.get().id(), device.get().rating(), inrush(subject, pointer, ask, device.get()));
        }
        var standard = stock.standardRating(ask).orElse(null);
        var strongest = stock.strongest(ask);
        if (strongest.isPresent()) {
            findings.add(FindingCode.SUPPLY_FAULT_RATING_LOW.at(
                    "the strongest " + stock.describe(ask) + " for " + subject,
                    pointer,
                    Rule.FAULT_RATING,
                    fault,
                    strongest.get().interruptingRating()));
            return new Choice(null, strongest.get().rating(), unjudged(ask));
        }
        var limit = Double.isFinite(ask.atMost()) ? new Current(ask.atMost()) : stock.largestStandard();
        findings.add(
                standard == null
                        ? FindingCode.SUPPLY_DEVICE_WINDOW_EMPTY.at(
                                subject, pointer, COORDINATION, new Current(ask.atLeast()), limit)
                        : FindingCode.SUPPLY_DEVICE_MISSING.at(
                                stock.describe(ask) + " for " + subject, pointer, COORDINATION, standard, limit));
        return new Choice(null, standard, unjudged(ask));
    }

    private static @Nullable Inrush unjudged(DeviceStock.Ask ask) {
        return ask.inrush() == 0 ? null : new Inrush(new Current(ask.inrush()), null);
    }

    private @Nullable Inrush inrush(String subject, String pointer, DeviceStock.Ask ask, ProtectiveDevice device) {
        if (ask.inrush() == 0) {
            return null;
        }
        var peak = new Current(ask.inrush());
        var tolerated = device.toleratedPeak();
        if (tolerated == null) {
            findings.add(FindingCode.SUPPLY_INRUSH_NOT_JUDGED.at(subject, pointer, INRUSH, peak, device.rating()));
        } else if (peak.si() >= tolerated.si()) {
            findings.add(FindingCode.SUPPLY_INRUSH_TRIPS.at(subject, pointer, INRUSH, peak, tolerated));
        }
        return new Inrush(peak, tolerated);
    }
}
