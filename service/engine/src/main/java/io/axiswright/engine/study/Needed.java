package io.axiswright.engine.study;

import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Wiring;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.standard.InsulationUnder;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Parts of a design that may be left out until a discipline needs them. */
final class Needed {

    private Needed() {}

    /** How the design wants its cables laid; nothing is wanted where it does not say. */
    static Wiring wiring(Design design) {
        return Objects.requireNonNullElse(design.wiring(), Wiring.UNSTATED);
    }

    static Network network(Design design) {
        return require(design.network(), "network", "host, places and route, as the network needs them");
    }

    /** How long cables between positions are; for one thread, to be asked more than once. */
    static CableLengths cableLengths(Design design) {
        return CableLengths.of(design, network(design));
    }

    static ControlPower controlPower(Design design) {
        return require(design.controlPower(), "controlPower", "what the control supply must meet");
    }

    static Installation installation(Design design) {
        return require(design.installation(), "installation", "how circuits are run and protected");
    }

    /** The insulation to look up under a code basis; the fault if that has none for it. */
    static Insulation insulation(CodeBasis basis, Design design) {
        return InsulationUnder.of(basis, installation(design).insulation())
                .orElseThrow(
                        () -> new InvalidDesign(List.of(InsulationUnder.fault("/design/installation/insulation"))));
    }

    private static <T> T require(@Nullable T part, String member, String accepted) {
        if (part == null) {
            throw new InvalidDesign(List.of(new Fault(
                    "/design/" + member, FaultCode.MISSING, "this part of the result cannot do without it", accepted)));
        }
        return part;
    }
}
