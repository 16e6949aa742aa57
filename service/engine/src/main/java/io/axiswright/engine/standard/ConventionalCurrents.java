package io.axiswright.engine.standard;

import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/** Conventional tripping currents I2 of IEC devices (IEC 60898-1, IEC 60947-2, IEC 60269-1). */
public final class ConventionalCurrents {

    private static final List<TableRow> ROWS = TableFile.rows("iec-conventional-currents");
    private static final StepTable<Ratio> BREAKER = table(DeviceKind.BREAKER);
    private static final StepTable<Ratio> FUSE = table(DeviceKind.FUSE);

    private ConventionalCurrents() {}

    /** I2 as a multiple of the rated current; nothing beyond the largest device. */
    public static Optional<Sourced<Ratio>> multiple(DeviceKind kind, Current rating) {
        return switch (kind) {
            case BREAKER -> BREAKER.at(rating.si());
            case FUSE -> FUSE.at(rating.si());
        };
    }

    private static StepTable<Ratio> table(DeviceKind kind) {
        return StepTable.of(
                ROWS,
                r -> r.word("device", DeviceKind.class) == kind,
                "rating_up_to",
                r -> Optional.of(new Ratio(r.number("multiple"))));
    }
}
