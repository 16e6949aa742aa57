package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A foot kit under a drive unit.
 *
 * @param kit the kit
 * @param required shaft height the machine asks for
 */
record FootFit(FootKit kit, Length required) {

    /** Heights closer than this are the same, m. */
    private static final double SAME = 1e-6;

    /** The kit of the frame size that needs least packing; if all are too high, the lowest. Equal heights: the cheapest. */
    static Optional<FootFit> of(String frameSize, Length required, List<FootKit> kits) {
        return kits.stream()
                .filter(kit -> kit.frameSize().equals(frameSize))
                .map(kit -> new FootFit(kit, required))
                .min(Comparator.comparing(FootFit::isTooHigh)
                        .thenComparing(fit -> Math.abs(fit.gap()))
                        .thenComparing(FootFit::kit, Parts.CHEAPEST));
    }

    /** How far the shaft lies below the height the machine asks for; negative if above, m. */
    double gap() {
        return required.si() - kit.shaftHeight().si();
    }

    boolean isTooHigh() {
        return gap() < -SAME;
    }

    /** Height of shims or riser; none if the kit fits as it is or cannot be made to fit from below. */
    Optional<Length> packing() {
        return gap() > SAME ? Optional.of(new Length(gap())) : Optional.empty();
    }
}
