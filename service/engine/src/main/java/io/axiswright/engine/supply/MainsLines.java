package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.Voltage;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the mains offer: their lines and the voltage of every way to connect a circuit.
 *
 * @param lines "L1" …
 * @param voltages nominal voltage of each connection they have
 */
record MainsLines(List<String> lines, Map<Connection, Voltage> voltages) {

    private static final double LINE_OVER_NEUTRAL = Math.sqrt(3);

    static MainsLines of(Mains mains) {
        var voltages = new EnumMap<Connection, Voltage>(Connection.class);
        switch (mains.system()) {
            case ONE_PHASE_TWO_WIRE -> voltages.put(Connection.LINE_TO_NEUTRAL, mains.voltage());
            case ONE_PHASE_THREE_WIRE -> {
                voltages.put(Connection.LINE_TO_LINE, mains.voltage());
                voltages.put(
                        Connection.LINE_TO_NEUTRAL, new Voltage(mains.voltage().si() / 2));
            }
            case THREE_PHASE_THREE_WIRE -> {
                voltages.put(Connection.THREE_PHASE, mains.voltage());
                voltages.put(Connection.LINE_TO_LINE, mains.voltage());
            }
            case THREE_PHASE_FOUR_WIRE -> {
                voltages.put(Connection.THREE_PHASE, mains.voltage());
                voltages.put(Connection.LINE_TO_LINE, mains.voltage());
                voltages.put(
                        Connection.LINE_TO_NEUTRAL, new Voltage(mains.voltage().si() / LINE_OVER_NEUTRAL));
            }
        }
        return new MainsLines(linesOf(mains.system()), voltages);
    }

    private static List<String> linesOf(SupplySystem system) {
        return switch (system) {
            case ONE_PHASE_TWO_WIRE -> List.of("L1");
            case ONE_PHASE_THREE_WIRE -> List.of("L1", "L2");
            case THREE_PHASE_THREE_WIRE, THREE_PHASE_FOUR_WIRE -> List.of("L1", "L2", "L3");
        };
    }

    /** The voltage of a connection they have. */
    Voltage voltage(Connection connection) {
        return Objects.requireNonNull(voltages.get(connection));
    }

    /** The names of the lines in a mask, bit 0 for L1. */
    List<String> named(int mask) {
        return lines.stream().filter(l -> (mask & 1 << lines.indexOf(l)) != 0).toList();
    }

    /** The mask of all lines. */
    int all() {
        return (1 << lines.size()) - 1;
    }

    /** How a transformer is connected to them: its primary stands between lines where there are two. */
    Connection primary(Feed secondary) {
        if (secondary == Feed.THREE_PHASE) {
            return Connection.THREE_PHASE;
        }
        return voltages.containsKey(Connection.LINE_TO_LINE) ? Connection.LINE_TO_LINE : Connection.LINE_TO_NEUTRAL;
    }

    /** How the supply itself is connected: all it has. */
    Connection whole() {
        return switch (lines.size()) {
            case 1 -> Connection.LINE_TO_NEUTRAL;
            case 2 -> Connection.LINE_TO_LINE;
            default -> Connection.THREE_PHASE;
        };
    }
}
