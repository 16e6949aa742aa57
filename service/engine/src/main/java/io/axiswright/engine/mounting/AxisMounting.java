package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The mounting of one axis as checked.
 *
 * @param axis id of the axis
 * @param fastening what its fastening is
 * @param verdict whether it holds
 * @param required torque it must carry, safety included
 * @param requiredBy what asks for so much
 * @param capacity torque it carries; absent if there is no key for the shaft
 * @param decidedBy what gives way first; absent likewise
 * @param keyWidth width of its key; absent for other fastenings
 * @param keyHeight height of its key; absent likewise
 * @param fasteningPart catalogue id of the part; absent if there is none for the shaft
 * @param footKit catalogue id of its foot kit; absent if face mounted or there is none
 * @param packing height of shims or riser under its feet; absent if none are needed or they would not help
 * @param alternatives fastenings that would carry the required torque; none are told where it holds
 */
public record AxisMounting(
        String axis,
        FasteningKind fastening,
        FasteningVerdict verdict,
        Torque required,
        FasteningLoad requiredBy,
        @Nullable Torque capacity,
        @Nullable FasteningMode decidedBy,
        @Nullable Length keyWidth,
        @Nullable Length keyHeight,
        @Nullable String fasteningPart,
        @Nullable String footKit,
        @Nullable Length packing,
        List<FasteningAlternative> alternatives) {

    /** Keeps the list from being changed. */
    public AxisMounting {
        alternatives = List.copyOf(alternatives);
    }
}
