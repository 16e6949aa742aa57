package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.memory.Memory;
import java.util.ArrayList;
import java.util.List;

/**
 * Works out what each axis asks of its drive unit, and chooses the cheapest drive unit that holds it, or judges the one
 * stated.
 */
public final class DutySizing {

    private final Memory memory;

    /** A sizing that works out every axis anew. */
    public DutySizing() {
        this(Memory.NONE);
    }

    /** A sizing that remembers axes. */
    public DutySizing(Memory memory) {
        this.memory = memory;
    }

    /**
     * Sizes every axis by itself.
     *
     * @throws io.axiswright.engine.finding.InvalidDesign if the request has no meaning; pointers start at the root of a
     *     study request, {@code /design/axes/…} and {@code /catalogue/driveUnits/…}
     */
    public DutyResult size(DutyRequest request) {
        DutyFaults.check(request);
        var sizing = new AxisSizing(request);
        List<AxisDuty> duties = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(DutyFindings.ofSite(request.site()));
        List<Derivation> derivations = new ArrayList<>();
        int asked = ReserveSearch.pieces(request.axes());
        boolean searched = asked <= ReserveSearch.MOST_PIECES;
        if (!searched) {
            findings.add(DutyFindings.unsearched(asked));
        }
        for (int k = 0; k < request.axes().size(); k++) {
            SizedAxis sized = memory.recall(
                    SizedAxis.class,
                    request.axes().get(k).id(),
                    new AxisSizing.Question(k, searched, request.alone(k)),
                    sizing::size);
            duties.add(sized.duty());
            findings.addAll(sized.findings());
            derivations.addAll(sized.derivations());
        }
        return new DutyResult(duties, findings, derivations);
    }
}
