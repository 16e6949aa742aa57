package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.util.Optional;
import java.util.OptionalDouble;

/** Short-circuit protection of motor branch circuits, NFPA 70 Table 430.52(C)(1). */
public final class MotorDevices {

    private MotorDevices() {}

    private static final Sourced<Ratio> BREAKER = read(DeviceKind.BREAKER);
    private static final Sourced<Ratio> FUSE = read(DeviceKind.FUSE);

    /**
     * Highest rating of the device as a multiple of the full-load current, before the next standard rating up is allowed:
     * inverse-time breaker or dual-element fuse, polyphase motor.
     */
    public static Sourced<Ratio> multiple(DeviceKind kind) {
        return switch (kind) {
            case BREAKER -> BREAKER;
            case FUSE -> FUSE;
        };
    }

    /**
     * What motors on one circuit permit, in A: what the largest alone may have, rounded up to a standard rating, plus the
     * currents of the others, not rounded (NFPA 70 430.52(C)(1), 430.53(C)(4)). Nothing above the largest standard rating.
     *
     * @param largest current of the largest, in A
     * @param others currents of the others, in A
     */
    public static OptionalDouble permitted(DeviceKind kind, double largest, double others) {
        var alone = new Current(multiple(kind).value().si() * largest);
        return DeviceRatings.nextUp(CodeBasis.NFPA_79, kind, alone)
                .map(rating -> OptionalDouble.of(rating.value().si() + others))
                .orElse(OptionalDouble.empty());
    }

    private static Sourced<Ratio> read(DeviceKind kind) {
        Optional<TableRow> row = TableFile.rows("nec-430-52").stream()
                .filter(r -> r.word("device", DeviceKind.class) == kind)
                .findFirst();
        return row.map(r -> r.sourced(new Ratio(r.number("multiple")))).orElseThrow();
    }
}
