package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Length;
import java.util.List;
import java.util.Optional;

/** Standard frames and their shaft heights. */
public final class Frames {

    private static final double METRES_PER_MILLIMETRE = 1e-3;
    private static final double METRES_PER_INCH = 0.0254;
    private static final List<Sourced<Frame>> IEC = read("iec-60072-1-frames", METRES_PER_MILLIMETRE);
    private static final List<Sourced<Frame>> NEMA = read("nema-mg-1-frames", METRES_PER_INCH);

    private Frames() {}

    /** A metric frame (IEC 60072-1) by its designation, such as "90S". */
    public static Optional<Sourced<Frame>> iec(String name) {
        return find(IEC, name);
    }

    /** An inch frame (NEMA MG 1) by its designation, such as "145T". */
    public static Optional<Sourced<Frame>> nema(String name) {
        return find(NEMA, name);
    }

    private static Optional<Sourced<Frame>> find(List<Sourced<Frame>> frames, String name) {
        return frames.stream().filter(f -> f.value().name().equals(name)).findFirst();
    }

    private static List<Sourced<Frame>> read(String file, double unit) {
        return TableFile.rows(file).stream()
                .map(r -> r.sourced(new Frame(
                        r.text("frame"),
                        new Length(r.number("shaft_height") * unit),
                        new Length(r.number("shaft_diameter") * unit))))
                .toList();
    }
}
