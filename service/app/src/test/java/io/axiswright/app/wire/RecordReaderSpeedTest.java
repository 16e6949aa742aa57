package io.axiswright.app.wire;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RecordReaderSpeedTest {

    /** Takes 0.3 ms on two busy cores; a reader that looked classes up anew at each record would miss the bound. */
    @Test
    void aDesignOfSixteenAxesIsReadInAboutAMillisecond() {
        Design some = new RandomRecords(16).next(Design.class);
        var records = new RandomRecords(17);
        var axes = Stream.generate(() -> records.next(Axis.class)).limit(16).toList();
        byte[] json = RecordWriter.write(new Design(
                some.name(),
                some.site(),
                some.mains(),
                axes,
                some.stopZones(),
                some.network(),
                some.controlPower(),
                some.installation()));
        long[] nanos = new long[3000];
        for (int k = 0; k < nanos.length; k++) {
            long start = System.nanoTime();
            RecordReader.read(json, Design.class);
            nanos[k] = System.nanoTime() - start;
        }
        Arrays.sort(nanos, 2000, 3000);
        assertThat(nanos[2500] / 1e6)
                .as("median of the warm reads, ms, %d bytes", json.length)
                .isLessThan(2);
    }
}
