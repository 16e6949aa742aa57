package io.axiswright.engine.conductor.checker;

import static io.axiswright.engine.conductor.checker.RawTable.number;
import static io.axiswright.engine.conductor.checker.RawTable.rows;
import static io.axiswright.engine.conductor.checker.RawTable.step;
import static io.axiswright.engine.conductor.checker.RawTable.text;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitKind;
import io.axiswright.engine.conductor.Limit;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.standard.ConductorClass;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Re-derives, from the raw tables alone, every limit that a size breaks under IEC 60204-1; nothing here selects. */
public final class IecChecker implements Checker {

    private static final double SLACK = 1 + 1e-9;
    private static final List<Map<String, String>> TABLE_6 = rows("iec-60204-1-table-6");
    private static final List<Map<String, String>> TABLE_D_1 = rows("iec-60204-1-table-d-1");
    private static final List<Map<String, String>> TABLE_D_2 = rows("iec-60204-1-table-d-2");
    private static final List<Map<String, String>> B_52 = rows("iec-60364-5-52-ampacity");
    private static final List<Map<String, String>> METHOD_F = rows("iec-60364-5-52-method-f");
    private static final List<Map<String, String>> B_52_14 = rows("iec-60364-5-52-table-b-52-14");
    private static final List<Map<String, String>> B_52_17 = rows("iec-60364-5-52-table-b-52-17");
    private static final List<Map<String, String>> RESISTANCE = rows("iec-60228");
    private static final List<Map<String, String>> B_52_AL = rows("iec-60364-5-52-ampacity-aluminium");
    private static final List<Map<String, String>> RESISTANCE_AL = rows("iec-60228-aluminium");
    private static final List<Map<String, String>> RATINGS = rows("device-ratings-iec");

    @Override
    public List<String> sizes(Circuit c) {
        return table(c).stream().map(r -> text(r, "size")).toList();
    }

    @Override
    public boolean covered(Circuit c, int parallel) {
        return !Double.isNaN(ambient(c) * together(c, parallel));
    }

    @Override
    public double device(Circuit c) {
        var ratings = RATINGS.stream()
                .filter(r -> text(r, "device").equals(c.device().name()))
                .mapToDouble(r -> number(r, "rating"))
                .toArray();
        double given = given(c);
        if (!Double.isNaN(given)) {
            return given <= ratings[ratings.length - 1] ? given : Double.NaN;
        }
        return Arrays.stream(ratings)
                .filter(r -> r * SLACK >= c.designCurrent().si())
                .min()
                .orElse(Double.NaN);
    }

    @Override
    public double[] deviceRange(Circuit c) {
        return new double[] {c.designCurrent().si(), Double.POSITIVE_INFINITY};
    }

    private static double given(Circuit c) {
        return c.deviceRating() == null ? Double.NaN : c.deviceRating().si();
    }

    @Override
    public double ampacity(Circuit c, Line line) {
        var row = table(c).stream()
                .filter(r -> text(r, "size").equals(line.size()))
                .findFirst()
                .orElseThrow();
        boolean singleInAir = c.method() == InstallationMethod.F;
        double one = number(row, singleInAir ? "ampacity" : c.method().name().toLowerCase(Locale.ROOT)) * ambient(c);
        if (pvc(c) && (aluminium(c) || singleInAir || mm2(line.size()) > 120)) {
            one *= 0.87; // from 30 °C to the 40 °C that tables D.1 starts from
        }
        // Annex E: four loaded conductors carry 86 % where the third harmonic is worth counting and the lines still
        // matter
        double h = c.thirdHarmonic() == null ? 0 : c.thirdHarmonic();
        double fourLoaded = h > 0.15 && h <= 0.45 ? 0.86 : 1;
        return line.parallel() * one * together(c, line.parallel()) * fourLoaded;
    }

    @Override
    public double drop(Circuit c, Line line) {
        var row = (aluminium(c) ? RESISTANCE_AL : RESISTANCE)
                .stream()
                        .filter(r -> text(r, "size").equals(line.size()))
                        .findFirst()
                        .orElseThrow();
        boolean stranded = aluminium(c) || c.conductorClass() == ConductorClass.CLASS_2;
        double cold = number(row, stranded ? "class_2" : "class_5");
        // factors as the reference prints them: 1.1965 at 70 °C, 1.2751 at 90 °C; aluminium 1 + 0.00403 times 50 and 70
        // K
        double hot = cold / 1000 * (aluminium(c) ? (pvc(c) ? 1.2015 : 1.2821) : pvc(c) ? 1.1965 : 1.2751);
        double phi = Math.acos(c.powerFactor());
        double along = hot * Math.cos(phi) + (c.kind() == CircuitKind.DC ? 0 : 0.00008 * Math.sin(phi));
        double ways = c.kind() == CircuitKind.AC_THREE_PHASE ? Math.sqrt(3) : 2;
        return ways * c.designCurrent().si() * c.length().si() * along / line.parallel();
    }

    @Override
    public Set<Limit> broken(Circuit c, Line line, double device) {
        var broken = EnumSet.noneOf(Limit.class);
        // above a third of the line current, the neutral carries more than a line: 3h of it
        double neutral =
                c.thirdHarmonic() == null || c.thirdHarmonic() <= 0.33 ? 1 : Math.max(1, 3 * c.thirdHarmonic());
        double load = neutral * c.designCurrent().si();
        double mm2 = mm2(line.size());
        double iz = ampacity(c, line);
        if (mm2 < smallest(c)) {
            broken.add(Limit.CODE_MINIMUM);
        }
        if (load > iz * SLACK) {
            broken.add(Limit.AMPACITY);
        }
        double ambient = c.ambient().si() - 273.15;
        double running = ambient + ((pvc(c) ? 70 : 90) - ambient) * Math.pow(load / iz, 2);
        if (running > c.terminationRating().si() - 273.15 + 1e-6) {
            broken.add(Limit.TERMINATION);
        }
        double i2 = c.device().name().equals("BREAKER")
                ? (device <= 125 ? 1.45 : 1.3) * device
                : (device <= 4 ? 2.1 : device < 16 ? 1.9 : 1.6) * device;
        if (neutral * device > iz * SLACK || neutral * i2 > 1.45 * iz * SLACK) {
            broken.add(Limit.DEVICE_COORDINATION);
        }
        if (drop(c, line) > c.voltageDropLimit() * c.voltage().si() * SLACK) {
            broken.add(Limit.VOLTAGE_DROP);
        }
        if (c.prospectiveFaultCurrent() != null && c.clearingTime() != null) {
            double heat = Math.pow(c.prospectiveFaultCurrent().si(), 2)
                    * c.clearingTime().si();
            if (heat > Math.pow((aluminium(c) ? (pvc(c) ? 76 : 94) : pvc(c) ? 115 : 143) * mm2, 2) * SLACK) {
                broken.add(Limit.FAULT_WITHSTAND);
            }
        }
        if (c.terminals() != null
                && c.terminals().smallest() != null
                && mm2 < mm2(c.terminals().smallest().label())) {
            broken.add(Limit.TERMINAL_RANGE);
        }
        return broken;
    }

    @Override
    public String protective(Circuit c, Line chosen, Line needed, double device) {
        double line = mm2(chosen.size());
        double byLine = line <= 16 ? line : line <= 35 ? 16 : line / 2;
        boolean leaks = c.leakageCurrent() != null && c.leakageCurrent().si() > 0.01;
        double wanted = leaks ? Math.max(aluminium(c) ? 16 : 10, byLine) : byLine;
        return RESISTANCE.stream()
                .map(r -> text(r, "size"))
                .filter(s -> mm2(s) >= wanted)
                .findFirst()
                .orElseThrow();
    }

    private static double smallest(Circuit c) {
        if (aluminium(c)) {
            return 16;
        }
        boolean single = c.method() == InstallationMethod.B1 || c.method() == InstallationMethod.F;
        if (c.use() == CircuitUse.CONTROL) {
            return single ? 1 : 0.2;
        }
        return single ? (c.conductorClass() == ConductorClass.CLASS_2 ? 1.5 : 1) : 0.75;
    }

    private static boolean aluminium(Circuit c) {
        return c.material() == ConductorMaterial.ALUMINIUM;
    }

    private static boolean pvc(Circuit c) {
        return c.insulation() == Insulation.PVC_70 || c.insulation() == Insulation.NEC_75;
    }

    private static double mm2(String size) {
        return Double.parseDouble(size.substring(0, size.indexOf(' ')));
    }

    private static double ambient(Circuit c) {
        double celsius = c.ambient().si() - 273.15;
        return pvc(c)
                ? step(TABLE_D_1, "ambient_up_to", celsius, "factor")
                : step(B_52_14, "ambient_up_to", celsius, "factor_xlpe_90");
    }

    private static double together(Circuit c, int parallel) {
        int circuits = c.groupedCircuits() - 1 + parallel;
        var d2 = ofMethod(TABLE_D_2, c);
        double machine = pvc(c) ? step(d2, "circuits_up_to", circuits, "factor") : Double.NaN;
        return Double.isNaN(machine) ? step(ofMethod(B_52_17, c), "circuits_up_to", circuits, "factor") : machine;
    }

    private static List<Map<String, String>> ofMethod(List<Map<String, String>> rows, Circuit c) {
        return rows.stream()
                .filter(r -> text(r, "method").equals(c.method().name()))
                .toList();
    }

    private static List<Map<String, String>> table(Circuit c) {
        String loaded = pvc(c) || c.kind() == CircuitKind.AC_THREE_PHASE ? "3" : "2";
        boolean singleInAir = c.method() == InstallationMethod.F;
        var installation = (singleInAir ? METHOD_F : aluminium(c) ? B_52_AL : B_52)
                .stream()
                        .filter(r -> !singleInAir
                                || text(r, "material").equals(c.material().name()))
                        .filter(r -> text(r, "insulation").equals(pvc(c) ? "PVC_70" : "XLPE_90")
                                && text(r, "loaded_conductors").equals(loaded))
                        .toList();
        return singleInAir || aluminium(c) || !pvc(c)
                ? installation
                : Stream.concat(TABLE_6.stream(), installation.stream().filter(r -> mm2(text(r, "size")) > 120))
                        .toList();
    }
}
