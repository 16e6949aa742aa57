package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Something the AC supply feeds.
 *
 * @param id the caller's own name for it, unique in the request
 * @param use what it does
 * @param feed what it is fed from
 * @param ratedVoltage rated input voltage: line to line for three phases, across its two terminals for one
 * @param ratedCurrent rated input current
 * @param thermalCurrent input current that heats like its cycle; at most the rated one in a sound design
 * @param maxProtectiveDevice highest rating of the protective device ahead; no limit if absent
 * @param maxUnitsPerCircuit most units on one branch circuit
 * @param shortCircuitRating short-circuit current rating; not stated if absent
 * @param leakageCurrent protective-conductor current in normal operation
 * @param routeLength length of its route from the mains panel
 * @param pointer JSON Pointer to what it belongs to in the request, such as its axis
 * @param zone circuits never mix loads of different zones; absent: the zone of all loads without one
 * @param busGroup name of the DC bus it shares: its rectifier feeds that bus, or that bus feeds it; absent: a bus of its own
 * @param inrushPeak peak of its input current when it is switched on; not known, and not counted, if absent
 * @param terminals sizes of conductors its terminals take; any if absent
 * @param course what it draws over its cycle, in step with all others whose cycle lasts as long; absent where that is not known
 */
public record SupplyLoad(
        String id,
        LoadUse use,
        Feed feed,
        @Bounds(above = 0, max = 1500) Voltage ratedVoltage,
        @Bounds(above = 0) Current ratedCurrent,
        @Bounds(min = 0) Current thermalCurrent,
        @Bounds(above = 0) @Nullable Current maxProtectiveDevice,
        @Bounds(min = 1, max = 64) int maxUnitsPerCircuit,
        @Bounds(above = 0) @Nullable Current shortCircuitRating,
        @Bounds(min = 0) Current leakageCurrent,
        @Bounds(min = 0, max = 1000) Length routeLength,
        String pointer,
        @Nullable String zone,
        @Nullable String busGroup,
        @Bounds(above = 0) @Nullable Current inrushPeak,
        @Nullable TerminalRange terminals,
        @Nullable CurrentCourse course) {

    /** A load of which inrush, terminals and course are not known. */
    public SupplyLoad(
            String id,
            LoadUse use,
            Feed feed,
            Voltage ratedVoltage,
            Current ratedCurrent,
            Current thermalCurrent,
            @Nullable Current maxProtectiveDevice,
            int maxUnitsPerCircuit,
            @Nullable Current shortCircuitRating,
            Current leakageCurrent,
            Length routeLength,
            String pointer,
            @Nullable String zone,
            @Nullable String busGroup) {
        this(
                id,
                use,
                feed,
                ratedVoltage,
                ratedCurrent,
                thermalCurrent,
                maxProtectiveDevice,
                maxUnitsPerCircuit,
                shortCircuitRating,
                leakageCurrent,
                routeLength,
                pointer,
                zone,
                busGroup,
                null,
                null,
                null);
    }

    /** The ids of loads, for the subject of a finding. */
    static String named(List<SupplyLoad> loads) {
        return loads.stream().map(SupplyLoad::id).collect(Collectors.joining(", "));
    }

    /** Its highest protective device in A; infinite where none is stated. */
    double deviceLimit() {
        return maxProtectiveDevice == null ? Double.POSITIVE_INFINITY : maxProtectiveDevice.si();
    }

    /** The same load with what it passes on to its DC bus: rated, cycle-thermal and protective-conductor current, in A. */
    SupplyLoad passingOn(double rated, double thermal, double leakage) {
        return new SupplyLoad(
                id,
                use,
                feed,
                ratedVoltage,
                new Current(ratedCurrent.si() + rated),
                new Current(thermalCurrent.si() + thermal),
                maxProtectiveDevice,
                maxUnitsPerCircuit,
                shortCircuitRating,
                new Current(leakageCurrent.si() + leakage),
                routeLength,
                pointer,
                zone,
                busGroup,
                inrushPeak,
                terminals,
                course);
    }

    /** Sum of the inrush peaks in A, as if all were switched on at one moment; what is not known counts nothing. */
    static double inrush(List<SupplyLoad> loads) {
        double sum = 0;
        for (SupplyLoad load : loads) {
            sum += load.inrushPeak == null ? 0 : load.inrushPeak.si();
        }
        return sum;
    }

    /** Its rated current in A. */
    double rated() {
        return ratedCurrent.si();
    }
}
