package io.axiswright.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.axiswright.engine.numeric.PolynomialPieces.Piece;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class PolynomialPiecesTest {

    @Test
    void followsSmoothFunctionsWithinTheTolerance() {
        assertFollows(Math::sin, 0, 2 * Math.PI, 1e-12, 40);
        assertFollows(t -> 1 / (1 + 25 * t * t), -1, 1, 1e-11, 80);
        assertFollows(t -> Math.exp(-3 * t), 0, 4, 1e-12, 40);
    }

    @Test
    void leavesPolynomialsWhole() {
        List<Piece> pieces = PolynomialPieces.of(t -> 2 - t + 3 * Math.pow(t, 7), 1, 3, 1e-9);

        assertThat(pieces).hasSize(1);
        assertThat(pieces.getFirst().polynomial().at(0.5)).isCloseTo(0.5 + 3 * Math.pow(1.5, 7), offset(1e-10));
    }

    @Test
    void endsWhereTheFunctionHasACorner() {
        List<Piece> pieces = PolynomialPieces.of(t -> Math.abs(t - 1 / 3.0), 0, 1, 1e-6);

        assertThat(pieces).hasSizeLessThan(60);
        assertThat(pieces.stream().mapToDouble(Piece::length).sum()).isCloseTo(1, offset(1e-12));
    }

    /** No polynomial follows digits that are only rounding, however short. */
    @Test
    void givesUpOnAToleranceBelowTheRounding() {
        List<Piece> pieces = PolynomialPieces.of(t -> 1e6 + Math.sin(t), 0, 10, 1e-13);

        assertThat(pieces).hasSizeBetween(1000, PolynomialPieces.MOST_PIECES);
        assertThat(pieces.stream().mapToDouble(Piece::length).sum()).isCloseTo(10, offset(1e-9));
        for (Piece piece : pieces) {
            assertThat(piece.polynomial().at(piece.length() / 3))
                    .isCloseTo(1e6 + Math.sin(piece.start() + piece.length() / 3), offset(1e-8));
        }
    }

    @Test
    void refusesWhatIsNotFinite() {
        assertThatIllegalArgumentException().isThrownBy(() -> PolynomialPieces.of(t -> Double.NaN, 0, 1, 1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PolynomialPieces.of(t -> 1 / (t - 0.5), 0, 1, 1e-9))
                .withMessageContaining("between");
    }

    private static void assertFollows(DoubleUnaryOperator f, double from, double to, double tolerance, int most) {
        List<Piece> pieces = PolynomialPieces.of(f, from, to, tolerance);
        assertThat(pieces).hasSizeLessThan(most);
        double end = from;
        for (Piece piece : pieces) {
            assertThat(piece.start()).isEqualTo(end);
            for (int k = 0; k <= 1000; k++) {
                double t = piece.length() * k / 1000;
                assertThat(piece.polynomial().at(t))
                        .as("at %s", end + t)
                        .isCloseTo(f.applyAsDouble(end + t), offset(2 * tolerance));
            }
            end += piece.length();
        }
        assertThat(end).isCloseTo(to, offset(1e-12));
    }

    private static org.assertj.core.data.Offset<Double> offset(double size) {
        return org.assertj.core.data.Offset.offset(size);
    }
}
