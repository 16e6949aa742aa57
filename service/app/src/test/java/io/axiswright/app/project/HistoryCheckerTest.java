package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.project.HistoryChecker.End;
import io.axiswright.app.project.HistoryChecker.Kept;
import io.axiswright.app.project.HistoryChecker.Told;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The checker sees each kind of broken promise. */
class HistoryCheckerTest {

    private static final Told FIRST = new Told("a", "start", End.STORED, 1, "A");
    private static final Told SECOND = new Told("b", "A", End.STORED, 2, "B");
    private static final Told LATE = new Told("c", "A", End.REFUSED, 0, null);
    private static final Told LOST = new Told("d", "*", End.UNKNOWN, 0, null);
    private static final Kept A = new Kept(1, null, "a", "A");
    private static final Kept B = new Kept(2, 1, "b", "B");
    private static final List<Told> TOLD = List.of(FIRST, SECOND, LATE, LOST);

    private static List<String> faults(Kept... history) {
        return HistoryChecker.faults(TOLD, List.of(history));
    }

    @Test
    void acceptsWhatKeepsThePromises() {
        assertThat(faults(A, B)).isEmpty();
        assertThat(faults(A, B, new Kept(3, 2, "d", "D"))).isEmpty();
    }

    @Test
    void seesBrokenPromises() {
        assertThat(faults(A)).singleElement().asString().startsWith("acknowledged");
        assertThat(faults(A, new Kept(2, 1, "b", "other")))
                .singleElement()
                .asString()
                .startsWith("acknowledged");
        assertThat(faults(A, B, new Kept(3, 2, "c", "C"))).anyMatch(fault -> fault.startsWith("refused"));
        assertThat(faults(A, B, new Kept(3, 2, "d", "D"), new Kept(4, 3, "d", "E")))
                .anyMatch(fault -> fault.startsWith("twice"));
        assertThat(faults(A, B, new Kept(4, 2, "d", "D"))).anyMatch(fault -> fault.startsWith("gap"));
        assertThat(faults(A, B, new Kept(3, 1, "d", "D"))).anyMatch(fault -> fault.startsWith("not after"));
        assertThat(faults(A, B, new Kept(3, 2, "x", "X"))).anyMatch(fault -> fault.startsWith("nobody"));
        assertThat(HistoryChecker.faults(List.of(FIRST, new Told("b", "stale", End.STORED, 2, "B")), List.of(A, B)))
                .anyMatch(fault -> fault.startsWith("not on the state"));
    }
}
