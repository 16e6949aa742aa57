package io.axiswright.engine.braking;

/**
 * What one run of the bus came to.
 *
 * @param start state at the start
 * @param end state at the end
 * @param peakEnergy highest energy, J
 * @param peakInstant when, s
 * @param suppliedToPeak energy the rectifier supplied until then, J
 * @param burnedToPeak energy into the resistor until then, J
 * @param tripInstant when the trip voltage was first reached, s; NaN if never
 * @param supplied energy the rectifier supplied, J
 * @param burned energy into the resistor, J
 * @param peakRise highest temperature of the resistor above ambient, K
 * @param switchings how often the chopper switched on
 */
record BusTrace(
        BusState start,
        BusState end,
        double peakEnergy,
        double peakInstant,
        double suppliedToPeak,
        double burnedToPeak,
        double tripInstant,
        double supplied,
        double burned,
        double peakRise,
        long switchings) {}
