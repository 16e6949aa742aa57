package io.axiswright.engine.quantity;

import java.util.regex.Pattern;

/**
 * A conductor's nominal size as the trade writes it: "2.5 mm2", "14 AWG", "2/0 AWG", "250 kcmil".
 *
 * @param label the size as written
 */
public record ConductorSize(String label) implements Comparable<ConductorSize> {

    private static final Pattern FORM = Pattern.compile("\\d+(\\.\\d+)? mm2|\\d{1,2} AWG|[1-4]/0 AWG|\\d{3,4} kcmil");
    /** 1 cmil = π/4 · (0.001 in)². */
    private static final double SQUARE_METRES_PER_CMIL = Math.PI / 4 * 25.4e-6 * 25.4e-6;

    /** What a caller may write, for messages. */
    public static final String ACCEPTED = "a size such as \"2.5 mm2\", \"14 AWG\", \"2/0 AWG\" or \"250 kcmil\"";

    /** Refuses a label that is not a conductor size. */
    public ConductorSize {
        if (!FORM.matcher(label).matches()) {
            throw new IllegalArgumentException(label + " is not " + ACCEPTED);
        }
    }

    /** A metric size by its nominal cross-section in mm². */
    public static ConductorSize metric(String squareMillimetres) {
        return new ConductorSize(squareMillimetres + " mm2");
    }

    /** Whether this is one of the metric sizes of IEC 60228. */
    public boolean isMetric() {
        return label.endsWith(" mm2");
    }

    /**
     * Nominal cross-section. AWG by the geometric rule of ASTM B258: d = 0.005 in · 92^((36 − n)/39), with n = 0, −1, −2,
     * −3 for 1/0 … 4/0.
     */
    public Area area() {
        // The form was checked at construction; areas are asked for too often to match it again.
        String number = label.substring(0, label.indexOf(' '));
        if (isMetric()) {
            return new Area(Double.parseDouble(number) * 1e-6);
        }
        if (label.endsWith(" kcmil")) {
            return new Area(Double.parseDouble(number) * 1000 * SQUARE_METRES_PER_CMIL);
        }
        int n = number.endsWith("/0") ? 1 - (number.charAt(0) - '0') : Integer.parseInt(number);
        double mils = 5 * Math.pow(92, (36.0 - n) / 39);
        return new Area(mils * mils * SQUARE_METRES_PER_CMIL);
    }

    @Override
    public int compareTo(ConductorSize other) {
        return Double.compare(area().si(), other.area().si());
    }

    @Override
    public String toString() {
        return label;
    }
}
