package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fuse or circuit-breaker.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param kind fuse or breaker
 * @param codeBasis the code basis it is listed under
 * @param poles poles
 * @param rating rated current
 * @param interruptingRating highest fault current it clears
 * @param ratedVoltage rated voltage
 * @param clearingPoints points of its time-current characteristic: a breaker's instantaneous trip, what a fuse clears
 *     within 0.4 s and 5 s; by rising current. Times of clearing are not examined if absent
 * @param letThroughEnergy most I²t it lets through at fault currents up to its interrupting rating; if absent, by its
 *     clearing points, none of them counted shorter than 0.1 s
 * @param isolates whether it isolates, can be locked open and is switched from outside its enclosure, so that a circuit-breaker
 *     can disconnect the machine from its supply (IEC 60204-1 5.3.2, 5.3.3); not if absent
 * @param aluminiumTerminals whether its terminals are marked for aluminium conductors; not known if absent
 * @param instantaneousTripping between which multiples of its rating a breaker begins to trip without delay; whether inrush
 *     trips it is not judged if absent
 * @param terminals sizes of conductors its terminals take; any if absent
 */
public record ProtectiveDevice(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        DeviceKind kind,
        CodeBasis codeBasis,
        @Bounds(min = 1, max = 4) int poles,
        @Bounds(above = 0) Current rating,
        @Bounds(above = 0) Current interruptingRating,
        @Bounds(above = 0) Voltage ratedVoltage,
        @Count(min = 1, max = 20) @Nullable List<ClearingPoint> clearingPoints,
        @Bounds(above = 0) @Nullable JouleIntegral letThroughEnergy,
        @Nullable Boolean isolates,
        @Nullable Boolean aluminiumTerminals,
        @Nullable TrippingBand instantaneousTripping,
        @Nullable TerminalRange terminals)
        implements Item {

    /** Whether it may disconnect a machine from its supply: a circuit-breaker that isolates and can be locked. */
    public boolean disconnects() {
        return kind == DeviceKind.BREAKER && Boolean.TRUE.equals(isolates);
    }

    /**
     * In shorter faults the direct component counts, and only the maker can say what is let through (IEC 60364-4-43
     * 434.5.2).
     */
    private static final double SHORTEST_SYMMETRICAL = 0.1;

    /** In longer ones conductors give heat off; that is overload, not short circuit (434.5.2). */
    private static final double LONGEST_ADIABATIC = 5;

    /** A device whose clearing times are not stated. */
    public ProtectiveDevice(
            String id,
            String description,
            @Nullable Money price,
            List<Need> needs,
            DeviceKind kind,
            CodeBasis codeBasis,
            int poles,
            Current rating,
            Current interruptingRating,
            Voltage ratedVoltage) {
        this(
                id,
                description,
                price,
                needs,
                kind,
                codeBasis,
                poles,
                rating,
                interruptingRating,
                ratedVoltage,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /**
     * The highest peak it surely stays closed at; absent where its band is not stated. A magnetic release answers to the moment's
     * current, its band is stated as r.m.s. of a sine: the peak of that is √2 times as high.
     */
    public @Nullable Current toleratedPeak() {
        return instantaneousTripping == null
                ? null
                : new Current(Math.sqrt(2) * instantaneousTripping.lower() * rating.si());
    }

    /** The time within which it clears a fault of that current; absent where no point says so. */
    public @Nullable Time clearingTime(Current fault) {
        return ClearingPoint.clearingTime(points(), fault);
    }

    /** The least current it clears within that time; absent where no point says so. */
    public @Nullable Current operatingCurrent(Time within) {
        return ClearingPoint.operatingCurrent(points(), within);
    }

    /** Most I²t it lets through in a fault of up to that current; absent where nothing says how long such a fault lasts. */
    public @Nullable JouleIntegral letThrough(Current highest) {
        if (letThroughEnergy != null) {
            return letThroughEnergy;
        }
        var brief = points().stream()
                .filter(point -> point.time().si() <= LONGEST_ADIABATIC)
                .toList();
        double most = 0;
        for (int k = 0; k < brief.size() && brief.get(k).current().si() <= highest.si(); k++) {
            // up to the next point a fault may last as long as at this one
            double end = k + 1 < brief.size() ? brief.get(k + 1).current().si() : Double.POSITIVE_INFINITY;
            double current = Math.min(end, highest.si());
            double time = Math.max(brief.get(k).time().si(), SHORTEST_SYMMETRICAL);
            most = Math.max(most, current * current * time);
        }
        return most == 0 ? null : new JouleIntegral(most);
    }

    private List<ClearingPoint> points() {
        return clearingPoints == null ? List.of() : clearingPoints;
    }
}
