package io.axiswright.app.wire;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one document: lists the first hundred, counts the rest. */
final class Faults {

    /** How many faults are listed. */
    static final int LISTED = 100;

    private final List<Fault> listed = new ArrayList<>();
    private int omitted;

    /** How many faults there are so far. */
    int count() {
        return listed.size() + omitted;
    }

    /** One more fault. */
    void add(Path path, FaultCode code, String detail, String accepted) {
        if (listed.size() < LISTED) {
            listed.add(new Fault(path.pointer(), code, detail, accepted));
        } else {
            omitted++;
        }
    }

    /** Every fault of an inner check, its pointers brought under a place. */
    void addAll(Path path, InvalidDesign inner) {
        for (Fault fault : inner.faults()) {
            if (listed.size() < LISTED) {
                listed.add(new Fault(path.pointer() + fault.pointer(), fault.code(), fault.detail(), fault.accepted()));
            } else {
                omitted++;
            }
        }
        omitted += inner.omitted();
    }

    /** Throws all faults if there are any. */
    void throwIfAny() {
        if (!listed.isEmpty()) {
            throw new InvalidDesign(listed, omitted);
        }
    }
}
