package io.axiswright.app.wire;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one document: lists the first hundred, counts the rest. */
public final class Faults {

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

    /** Every fault of a part of the document, which stands at a place of it. */
    public void addAll(String place, InvalidDesign part) {
        for (Fault fault : part.under(place).faults()) {
            if (listed.size() < LISTED) {
                listed.add(fault);
            } else {
                omitted++;
            }
        }
        omitted += part.omitted();
    }

    /** Throws all faults if there are any. */
    public void throwIfAny() {
        if (!listed.isEmpty()) {
            throw new InvalidDesign(listed, omitted);
        }
    }
}
