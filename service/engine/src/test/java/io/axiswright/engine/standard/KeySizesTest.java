package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.quantity.Length;
import org.junit.jupiter.api.Test;

class KeySizesTest {

    private static final double INCH = 0.0254;

    /** DIN 6885-1, read at machinecalcs.com/keyway-dimension-calculator: over 22 to 30 mm: 8 x 7, t1 4.0, t2 3.3. */
    @Test
    void metricKeyOf24MillimetreShaft() {
        var key = KeySizes.metric(new Length(0.024)).orElseThrow();
        assertThat(key.width().si()).isCloseTo(0.008, within(1e-12));
        assertThat(key.height().si()).isCloseTo(0.007, within(1e-12));
        assertThat(key.shaftDepth().si()).isCloseTo(0.004, within(1e-12));
        assertThat(key.hubDepth().si()).isCloseTo(0.0033, within(1e-12));
        assertThat(key.clause()).contains("DIN 6885-1");
    }

    /** The upper bound of a row belongs to it, the lower one to the row before. */
    @Test
    void boundsBelongToTheRowBelow() {
        assertThat(KeySizes.metric(new Length(0.022)).orElseThrow().width().si())
                .isCloseTo(0.006, within(1e-12));
        assertThat(KeySizes.metric(new Length(0.0221)).orElseThrow().width().si())
                .isCloseTo(0.008, within(1e-12));
        assertThat(KeySizes.metric(new Length(0.006))).isEmpty();
        assertThat(KeySizes.metric(new Length(0.231))).isEmpty();
    }

    /** NEMA MG 1 4.4.1: frame 182T, shaft 1.125 in, key 0.25 in; 213T, 1.375 in, 0.312 in (engineersedge.com/nema_frames.htm). */
    @Test
    void inchKeyAgreesWithMachineFrames() {
        assertThat(KeySizes.inch(new Length(1.125 * INCH)).orElseThrow().width().si())
                .isCloseTo(0.25 * INCH, within(1e-12));
        assertThat(KeySizes.inch(new Length(1.375 * INCH)).orElseThrow().width().si())
                .isCloseTo(0.3125 * INCH, within(1e-12));
    }

    /** IEC 60072-1 (from memory): the key of frame 90's 24 mm shaft is 8 mm wide, of 132's 38 mm shaft 10 mm. */
    @Test
    void metricKeyAgreesWithMachineFrames() {
        var frame = Frames.iec("132S").orElseThrow().value();
        assertThat(frame.shaftHeight().si()).isCloseTo(0.132, within(1e-12));
        assertThat(KeySizes.metric(frame.shaftDiameter()).orElseThrow().width().si())
                .isCloseTo(0.010, within(1e-12));
        assertThat(Frames.iec("999")).isEmpty();
    }
}
