package io.axiswright.engine.conductor.checker;

import static io.axiswright.engine.conductor.checker.RawTable.number;
import static io.axiswright.engine.conductor.checker.RawTable.rows;
import static io.axiswright.engine.conductor.checker.RawTable.step;
import static io.axiswright.engine.conductor.checker.RawTable.text;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitKind;
import io.axiswright.engine.conductor.Limit;
import io.axiswright.engine.conductor.LoadKind;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.standard.CircuitUse;
import io.axiswright.engine.standard.Raceway;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Re-derives, from the raw tables alone, every limit that a size breaks under NFPA 79; nothing here selects. */
public final class NecChecker implements Checker {

    private static final double SLACK = 1 + 1e-9;
    private static final List<Map<String, String>> SMALL = rows("nfpa-79-12-5-1");
    private static final List<Map<String, String>> LARGE = rows("nec-310-16");
    private static final List<Map<String, String>> AMBIENT = rows("nec-310-15-b-1");
    private static final List<Map<String, String>> TOGETHER = rows("nec-310-15-c-1");
    private static final List<Map<String, String>> TABLE_8 = rows("nec-chapter-9-table-8");
    private static final List<Map<String, String>> TABLE_9 = rows("nec-chapter-9-table-9");
    private static final List<Map<String, String>> RULE_D = rows("nec-240-4-d");
    private static final List<Map<String, String>> RATINGS = rows("device-ratings-na");
    private static final List<Map<String, String>> EGC = rows("nec-250-122");
    private static final List<Map<String, String>> LARGE_AL = rows("nec-310-16-aluminium");
    private static final List<Map<String, String>> TABLE_8_AL = rows("nec-chapter-9-table-8-aluminium");
    private static final List<Map<String, String>> TABLE_9_AL = rows("nec-chapter-9-table-9-aluminium");
    private static final List<Map<String, String>> RULE_D_AL = rows("nec-240-4-d-aluminium");
    private static final List<Map<String, String>> EGC_AL = rows("nec-250-122-aluminium");
    private static final List<Map<String, String>> EGC_79 = rows("nfpa-79-8-2-2-3");

    @Override
    public List<String> sizes(Circuit c) {
        return (aluminium(c) ? LARGE_AL : TABLE_8)
                .stream().map(r -> text(r, "size")).toList();
    }

    @Override
    public boolean covered(Circuit c, int parallel) {
        return !Double.isNaN(ambient(c));
    }

    @Override
    public double device(Circuit c) {
        return c.deviceRating() == null
                ? nextUp(c, wanted(c))
                : c.deviceRating().si();
    }

    @Override
    public double[] deviceRange(Circuit c) {
        double load = c.designCurrent().si();
        return switch (c.loadKind()) {
            case GENERAL, GENERAL_CONTINUOUS, BRAKING_RESISTOR -> new double[] {demand(c), Double.POSITIVE_INFINITY};
            case MOTOR_OR_DRIVE -> new double[] {load, nextUp(c, wanted(c))};
        };
    }

    /** What the load asks of its conductors, the neutral aside, before anything is corrected. */
    private static double demand(Circuit c) {
        double amperes = c.designCurrent().si();
        return switch (c.loadKind()) {
            case GENERAL -> amperes;
            case GENERAL_CONTINUOUS -> 1.25 * amperes;
            case MOTOR_OR_DRIVE -> 1.25 * largest(c) + (amperes - largest(c));
            case BRAKING_RESISTOR -> resistorShare(c) * amperes;
        };
    }

    private static double largest(Circuit c) {
        return (c.largestLoad() == null ? c.designCurrent() : c.largestLoad()).si();
    }

    /** Table 430.29, each row serving what is on no longer and off no shorter. */
    private static double resistorShare(Circuit c) {
        if (c.resistorPulse() == null) {
            return 1.1;
        }
        double on = c.resistorPulse().on().si();
        double off = c.resistorPulse().off().si();
        return on <= 5 && off >= 75
                ? 0.35
                : on <= 10 && off >= 70
                        ? 0.45
                        : on <= 15 && off >= 75
                                ? 0.55
                                : on <= 15 && off >= 45
                                        ? 0.65
                                        : on <= 15 && off >= 30 ? 0.75 : on <= 15 && off >= 15 ? 0.85 : 1.1;
    }

    private static double wanted(Circuit c) {
        if (c.loadKind() != LoadKind.MOTOR_OR_DRIVE) {
            return demand(c);
        }
        double one = nextUp(c, largest(c) * (c.device().name().equals("FUSE") ? 1.75 : 2.5));
        double others = c.designCurrent().si() - largest(c);
        double down = RATINGS.stream()
                .filter(r -> text(r, "device").equals(c.device().name()))
                .mapToDouble(r -> number(r, "rating"))
                .filter(r -> r <= (one + others) * SLACK)
                .max()
                .orElse(0);
        // 430.53(C)(4) with 430.52 for the largest; 240.4(B) for the conductors
        return Math.max(down, nextUp(c, demand(c)));
    }

    @Override
    public double ampacity(Circuit c, Line line) {
        int neutral = c.thirdHarmonic() != null && c.thirdHarmonic() > 0 ? 1 : 0;
        int conductors = (c.kind() == CircuitKind.AC_THREE_PHASE ? 3 : 2) + neutral;
        int together = (c.groupedCircuits() - 1 + line.parallel()) * conductors;
        return line.parallel()
                * base(c, line.size(), column(c))
                * ambient(c)
                * step(TOGETHER, "conductors_up_to", together, "factor");
    }

    @Override
    public double drop(Circuit c, Line line) {
        String size = line.size();
        double r = number(row(aluminium(c) ? TABLE_8_AL : TABLE_8, size), "resistance");
        double x = 0;
        Raceway raceway = c.raceway() == null ? Raceway.STEEL : c.raceway();
        if (c.kind() != CircuitKind.DC) {
            for (var row : TABLE_9) {
                if (text(row, "size").equals(size) && text(row, "raceway").equals(raceway.name())) {
                    r = number(row, "resistance");
                    x = number(row, "reactance");
                }
            }
            for (var row : TABLE_9_AL) {
                if (aluminium(c)
                        && text(row, "size").equals(size)
                        && text(row, "raceway").equals(raceway.name())) {
                    r = number(row, "resistance");
                }
            }
        }
        double phi = Math.acos(c.powerFactor());
        double along = (r * Math.cos(phi) + x * Math.sin(phi)) / 304.8;
        double ways = c.kind() == CircuitKind.AC_THREE_PHASE ? Math.sqrt(3) : 2;
        return ways * c.designCurrent().si() * c.length().si() * along / line.parallel();
    }

    @Override
    public Set<Limit> broken(Circuit c, Line line, double device) {
        String size = line.size();
        var broken = EnumSet.noneOf(Limit.class);
        double load = c.designCurrent().si();
        boolean motor = c.loadKind() == LoadKind.MOTOR_OR_DRIVE;
        double atTerminals = line.parallel() * base(c, size, Math.min(column(c), terminalColumn(c)));
        double corrected = ampacity(c, line);
        double neutral = c.thirdHarmonic() == null ? 1 : Math.max(1, 3 * c.thirdHarmonic());
        boolean addedAfter = motor || c.loadKind() == LoadKind.BRAKING_RESISTOR;
        String thinnest = line.parallel() > 1
                ? "1/0 AWG"
                : aluminium(c) ? "12 AWG" : c.use() == CircuitUse.POWER ? "14 AWG" : "18 AWG";
        if (mils(size) < mils(thinnest)) {
            broken.add(Limit.CODE_MINIMUM);
        }
        if (neutral * demand(c) > atTerminals * SLACK) {
            broken.add(Limit.TERMINATION);
        }
        if (neutral * (addedAfter ? demand(c) : load) > corrected * SLACK) {
            broken.add(Limit.AMPACITY);
        }
        if (!motor) {
            for (var row : aluminium(c) ? RULE_D_AL : RULE_D) {
                if (text(row, "size").equals(size)
                        && (device > number(row, "max_device") * SLACK
                                || (c.loadKind() == LoadKind.GENERAL_CONTINUOUS
                                        && load > number(row, "max_continuous_load") * SLACK))) {
                    broken.add(Limit.SMALL_CONDUCTOR);
                }
            }
            double usable = Math.min(corrected, atTerminals);
            double allowed = device <= 800 ? Math.max(usable, nextUp(c, usable)) : usable;
            if (device > allowed * SLACK) {
                broken.add(Limit.DEVICE_COORDINATION);
            }
        }
        if (drop(c, line) > c.voltageDropLimit() * c.voltage().si() * SLACK) {
            broken.add(Limit.VOLTAGE_DROP);
        }
        if (c.prospectiveFaultCurrent() != null && c.clearingTime() != null) {
            double k = aluminium(c)
                    ? (column(c) == 60 ? 77.1 : column(c) == 75 ? 69.6 : 61.5)
                    : column(c) == 60 ? 116.7 : column(c) == 75 ? 105.2 : 93.0;
            // heat: I²t against k²S², S of the geometric area
            double heat = Math.pow(c.prospectiveFaultCurrent().si(), 2)
                    * c.clearingTime().si();
            if (heat > Math.pow(k * exactMm2(size), 2) * SLACK) {
                broken.add(Limit.FAULT_WITHSTAND);
            }
        }
        if (c.terminals() != null
                && c.terminals().smallest() != null
                && mils(size) < mils(c.terminals().smallest().label())) {
            broken.add(Limit.TERMINAL_RANGE);
        }
        return broken;
    }

    @Override
    public String protective(Circuit c, Line chosen, Line needed, double device) {
        String byDevice = byDevice(c, chosen, needed, device);
        boolean leaks = c.leakageCurrent() != null && c.leakageCurrent().si() > 0.01;
        // 10 mm² of copper, 16 mm² of aluminium
        String least = aluminium(c) ? "4 AWG" : "6 AWG";
        return leaks && !byDevice.equals(NONE) && mils(byDevice) < mils(least) ? least : byDevice;
    }

    private String byDevice(Circuit c, Line chosen, Line needed, double device) {
        var table = aluminium(c) ? EGC_AL : device <= 600 ? EGC_79 : EGC;
        String egc = "";
        for (var row : table) {
            if (egc.isEmpty() && device <= number(row, "device_up_to")) {
                egc = text(row, "size");
            }
        }
        if (egc.isEmpty()) {
            return NONE;
        }
        double all = chosen.parallel() * mils(chosen.size());
        double wanted = mils(egc) * (all / (needed.parallel() * mils(needed.size())));
        for (String size : sizes(c)) {
            if (mils(size) * SLACK >= wanted && mils(size) < all) {
                return size;
            }
        }
        return chosen.size();
    }

    private static boolean aluminium(Circuit c) {
        return c.material() == ConductorMaterial.ALUMINIUM;
    }

    private static int column(Circuit c) {
        return switch (c.insulation()) {
            case NEC_60, PVC_70 -> 60;
            case NEC_75 -> 75;
            case NEC_90, XLPE_90 -> 90;
        };
    }

    private static int terminalColumn(Circuit c) {
        double celsius = c.terminationRating().si() - 273.15;
        return celsius > 89.99 ? 90 : celsius > 74.99 ? 75 : 60;
    }

    private static double ambient(Circuit c) {
        return step(AMBIENT, "ambient_up_to", c.ambient().si() - 273.15, "factor_" + column(c));
    }

    private static double base(Circuit c, String size, int column) {
        if (aluminium(c)) {
            return number(row(LARGE_AL, size), "ampacity_" + column);
        }
        var row = LARGE.stream().anyMatch(r -> text(r, "size").equals(size)) ? row(LARGE, size) : row(SMALL, size);
        return number(row, "ampacity_" + column);
    }

    private static double mils(String size) {
        return number(row(TABLE_8, size), "circular_mils");
    }

    private static double exactMm2(String size) {
        if (size.endsWith("kcmil")) {
            return mils(size) * Math.PI / 4 * 0.0254 * 0.0254;
        }
        String gauge = size.substring(0, size.indexOf(' ')).toLowerCase(Locale.ROOT);
        double n = gauge.endsWith("/0") ? 1 - Double.parseDouble(gauge.substring(0, 1)) : Double.parseDouble(gauge);
        double diameter = 0.127 * Math.pow(92, (36 - n) / 39);
        return Math.PI / 4 * diameter * diameter;
    }

    private static double nextUp(Circuit c, double amperes) {
        return RATINGS.stream()
                .filter(r -> text(r, "device").equals(c.device().name()))
                .mapToDouble(r -> number(r, "rating"))
                .filter(r -> r * SLACK >= amperes)
                .min()
                .orElse(Double.NaN);
    }

    private static Map<String, String> row(List<Map<String, String>> table, String size) {
        return table.stream()
                .filter(r -> text(r, "size").equals(size))
                .findFirst()
                .orElseThrow();
    }
}
