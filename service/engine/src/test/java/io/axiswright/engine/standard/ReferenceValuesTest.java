package io.axiswright.engine.standard;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.ResourceTable;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every value collected from outside, looked up. The file names its pages; a table not in {@link #LOOK_UPS} fails. */
class ReferenceValuesTest {

    private static final double KFT = 304.8;
    private static final double KM = 1000;
    private static final List<NamedCsvRecord> ROWS = ResourceTable.rows("/reference/code-tables.csv");

    /** What the engine says for a row and a column of a table, as the file writes it. */
    private static final Map<String, BiFunction<String, String, Optional<String>>> LOOK_UPS = Map.ofEntries(
            entry(
                    "nec-310-15-b-1",
                    (row, column) -> si(NecCorrection.ambient(Insulation.valueOf(column), celsius(row)), 1)),
            entry(
                    "nec-310-16",
                    (row, column) -> si(
                            NecAmpacity.of(
                                    ConductorMaterial.COPPER, new ConductorSize(row), Insulation.valueOf(column)),
                            1)),
            entry("nec-310-15-c-1", (row, _) -> si(NecCorrection.together(Integer.parseInt(row)), 1)),
            entry(
                    "nec-chapter-9-table-9-r",
                    (row, column) ->
                            si(impedance(row, column).map(s -> over(s, s.value().resistance())), KFT)),
            entry(
                    "nec-chapter-9-table-9-x",
                    (row, column) ->
                            si(impedance(row, column).map(s -> over(s, s.value().reactance())), KFT)),
            entry("nec-chapter-9-table-8", ReferenceValuesTest::table8),
            entry("nec-250-122", (row, _) -> protective(row)),
            entry("nfpa-79-8-2-2-3", (row, _) -> protective(row)),
            entry("nec-240-4-d", ReferenceValuesTest::smallConductor),
            entry("nec-240-6-a", ReferenceValuesTest::standardRating),
            entry(
                    "iec-60204-1-table-6",
                    (row, column) -> si(
                            IecAmpacity.machine(
                                    ConductorMaterial.COPPER, metric(row), InstallationMethod.valueOf(column)),
                            1)),
            entry("iec-60204-1-table-d-1", (row, _) -> si(IecCorrection.machineAmbient(celsius(row)), 1)),
            entry(
                    "iec-60204-1-table-d-2",
                    (row, column) -> si(
                            IecCorrection.machineGrouping(InstallationMethod.valueOf(column), Integer.parseInt(row)),
                            1)),
            entry(
                    "iec-60364-5-52-table-b-52-14",
                    (row, column) -> si(IecCorrection.ambient(Insulation.valueOf(column), celsius(row)), 1)),
            entry("iec-60364-5-52-ampacity", ReferenceValuesTest::installation),
            entry(
                    "iec-60364-5-52-table-b-52-17",
                    (row, column) ->
                            si(IecCorrection.grouping(InstallationMethod.valueOf(column), Integer.parseInt(row)), 1)),
            entry(
                    "iec-60228",
                    (row, column) -> si(
                            IecConductors.resistanceAt20(
                                    ConductorMaterial.COPPER, metric(row), ConductorClass.valueOf(column)),
                            KM)));

    @TestFactory
    Stream<DynamicTest> everyValueIsTheEngines() {
        return ROWS.stream()
                .map(r -> r.getField("table"))
                .distinct()
                .map(table -> DynamicTest.dynamicTest(table, () -> check(table)));
    }

    private static void check(String table) {
        for (NamedCsvRecord record : ROWS) {
            if (record.getField("table").equals(table)) {
                String where = record.getFields().toString();
                String printed = record.getField("value");
                String found = Objects.requireNonNull(LOOK_UPS.get(table), table)
                        .apply(record.getField("row"), record.getField("column"))
                        .orElse("absent");
                if (Character.isDigit(printed.charAt(0)) && !printed.endsWith("AWG") && !found.equals("absent")) {
                    assertThat(Double.parseDouble(found))
                            .as(where)
                            .isCloseTo(
                                    Double.parseDouble(printed),
                                    within(1e-9 + 1e-9 * Math.abs(Double.parseDouble(printed))));
                } else {
                    assertThat(found).as(where).isEqualTo(printed);
                }
            }
        }
    }

    @Test
    void noTableOfTheFileWasLost() {
        assertThat(ROWS).hasSizeGreaterThan(700);
        assertThat(ROWS.stream().map(r -> r.getField("table")).distinct()).hasSameSizeAs(LOOK_UPS.keySet());
    }

    private static <T extends Quantity> Optional<String> si(Optional<Sourced<T>> found, double scale) {
        return found.map(s -> Double.toString(s.value().si() * scale));
    }

    private static <T> Sourced<T> over(Sourced<?> sourced, T value) {
        return new Sourced<>(value, sourced.source());
    }

    private static Optional<Sourced<LineImpedance>> impedance(String size, String raceway) {
        return NecConductors.impedance(ConductorMaterial.COPPER, new ConductorSize(size), Raceway.valueOf(raceway));
    }

    private static Optional<String> table8(String row, String column) {
        var size = new ConductorSize(row);
        return column.equals("resistance")
                ? si(NecConductors.directCurrentResistance(ConductorMaterial.COPPER, size), KFT)
                : NecConductors.circularMils(size).map(s -> s.value().toString());
    }

    private static Optional<String> protective(String device) {
        return ProtectiveConductors.northAmerican(ConductorMaterial.COPPER, new Current(Double.parseDouble(device)))
                .map(s -> s.value().label());
    }

    private static Optional<String> smallConductor(String row, String column) {
        var size = new ConductorSize(row);
        return si(
                column.equals("max_device")
                        ? SmallConductorRule.maxDevice(ConductorMaterial.COPPER, size)
                        : SmallConductorRule.maxContinuousLoad(ConductorMaterial.COPPER, size),
                1);
    }

    private static Optional<String> standardRating(String row, String column) {
        double amperes = Double.parseDouble(row);
        return Optional.of(
                DeviceRatings.of(CodeBasis.NFPA_79, DeviceKind.valueOf(column)).stream()
                                .anyMatch(r -> r.value().si() == amperes)
                        ? "yes"
                        : "no");
    }

    private static Optional<String> installation(String row, String column) {
        String[] parts = column.split(" ");
        return si(
                IecAmpacity.installation(
                        ConductorMaterial.COPPER,
                        metric(row),
                        InstallationMethod.valueOf(parts[0]),
                        Insulation.valueOf(parts[1]),
                        Integer.parseInt(parts[2])),
                1);
    }

    private static ConductorSize metric(String row) {
        return ConductorSize.metric(row);
    }

    private static Temperature celsius(String row) {
        return new Temperature(Double.parseDouble(row) + 273.15);
    }
}
