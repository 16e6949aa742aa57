package io.axiswright.engine.mounting;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What this discipline takes as given, read from its table; the table says where each value comes from. */
final class MountingConstants {

    private static final Map<String, Double> TABLE = read();

    /** Yield strength in shear over yield strength. */
    static final double SHEAR_SHARE = value("shearShare");
    /** Longest length of key that counts, in shaft diameters. */
    static final double KEY_LENGTH_LIMIT = value("keyLengthLimit");
    /** Highest reduction of a bonded joint that allows for alternating load. */
    static final double BOND_REVERSING_REDUCTION = value("bondReversingReduction");
    /** How far the preload of a screw may miss, as a fraction. */
    static final double PRELOAD_SCATTER = value("preloadScatter");
    /** Coefficient of friction of a clamp hub nothing is known of. */
    static final double SMOOTH_FRICTION = value("smoothFriction");

    private MountingConstants() {}

    private static double value(String name) {
        return Objects.requireNonNull(TABLE.get(name), name);
    }

    private static Map<String, Double> read() {
        try (var in = Objects.requireNonNull(MountingConstants.class.getResourceAsStream("/mounting/constants.csv"));
                var csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8));
                Stream<NamedCsvRecord> rows = csv.stream()) {
            return rows.collect(Collectors.toUnmodifiableMap(
                    row -> row.getField("name"), row -> Double.valueOf(row.getField("value"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
