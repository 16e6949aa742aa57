package io.axiswright.engine.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import io.axiswright.engine.Copies;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.study.TestCell;
import org.junit.jupiter.api.Test;

class MainsCheckTest {

    /** The test cell states 5 kA as the highest. */
    @Test
    void theLowestFaultCurrentIsNoHigherThanTheHighest() {
        assertThat(DesignCheck.faults(withLowest(5001), "/design"))
                .extracting(Fault::pointer, Fault::code)
                .containsExactly(tuple("/design/mains/minimumFaultCurrent", FaultCode.INCONSISTENT));
        assertThat(DesignCheck.faults(withLowest(5000), "/design")).isEmpty();
    }

    private static Design withLowest(double amperes) {
        Design d = TestCell.design(1);
        Mains m = d.mains();
        var mains = new Mains(
                m.system(),
                m.voltage(),
                m.lowTolerance(),
                m.highTolerance(),
                m.frequency(),
                m.prospectiveFaultCurrent(),
                new Current(amperes),
                null,
                null,
                null);
        return Copies.with(d, "mains", mains);
    }
}
