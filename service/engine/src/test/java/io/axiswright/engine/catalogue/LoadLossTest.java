package io.axiswright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.study.TestCell;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the load adds to the loss of a drive unit's electronics. */
class LoadLossTest {

    private static final double RATED_TORQUE = 1.3;

    /** 10 W without load, 30 W at 1.3 N·m. */
    private static final DriveUnit UNIT =
            Copies.with(TestCell.catalogue().driveUnits().getFirst(), "ratedLoss", new Power(30));

    private static double added(double effective) {
        return UNIT.loadLoss(new Torque(effective)).orElseThrow().si();
    }

    /** Half the rated torque: half of 20 W; twice the rated torque, if only the square counts: four times 20 W. */
    @Test
    void byHand() {
        assertThat(added(0)).isZero();
        assertThat(added(RATED_TORQUE / 2)).isCloseTo(10, within(1e-12));
        assertThat(added(RATED_TORQUE)).isCloseTo(20, within(1e-12));
        assertThat(added(2 * RATED_TORQUE)).isCloseTo(80, within(1e-12));
    }

    @Test
    void notKnownWithoutTheRatedLoss() {
        assertThat(TestCell.catalogue().driveUnits().getFirst().loadLoss(new Torque(1)))
                .isEmpty();
    }

    /** Random cycles of torque and random parts in proportion to torque and its square: the loss is never above. */
    @Test
    void boundsEveryMixOfLinearAndSquareLoss() {
        var random = new Random(20_261_128);
        for (int k = 0; k < 2000; k++) {
            double linear = 20 * random.nextDouble();
            double square = 20 - linear;
            double scale = 2 * RATED_TORQUE * random.nextDouble();
            double time = 0;
            double loss = 0;
            double squares = 0;
            for (int piece = 0; piece < 6; piece++) {
                double length = random.nextDouble();
                double torque = scale * random.nextDouble();
                double share = torque / RATED_TORQUE;
                time += length;
                loss += length * (linear * share + square * share * share);
                squares += length * torque * torque;
            }
            assertThat(loss / time).isLessThanOrEqualTo(added(Math.sqrt(squares / time)) * (1 + 1e-12));
        }
    }

    @Test
    void theRatedLossIsNoLessThanThatWithoutLoad() {
        Catalogue catalogue =
                Copies.with(TestCell.catalogue(), "driveUnits", List.of(Copies.with(UNIT, "ratedLoss", new Power(9))));
        assertThat(CatalogueCheck.faults(catalogue, "/c"))
                .extracting(Fault::pointer)
                .contains("/c/driveUnits/0/ratedLoss");
    }
}
