package io.axiswright.engine.study;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Mains;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Another market the same machine is to be sold in.
 *
 * @param codeBasis the electrical code to follow there
 * @param mains what the machine is supplied from there; as in the design if absent
 * @param installation how its circuits are run there; as in the design if absent
 */
public record OtherMarket(
        CodeBasis codeBasis,
        @Nullable Mains mains,
        @Nullable Installation installation) {

    private static final String MAINS = "/design/mains";
    private static final String INSTALLATION = "/design/installation";
    private static final String CODE_BASIS = "/codeBasis";

    /** What a study of the machine in that market is made from; it draws nothing. */
    StudyRequest request(StudyRequest here) {
        Design design = here.design();
        return new StudyRequest(
                codeBasis,
                here.catalogue(),
                new Design(
                        design.name(),
                        design.site(),
                        Objects.requireNonNullElse(mains, design.mains()),
                        design.axes(),
                        design.stopZones(),
                        design.network(),
                        design.controlPower(),
                        installation == null ? design.installation() : installation,
                        design.wiring(),
                        design.spares(),
                        design.operation(),
                        design.commonCoupling(),
                        design.margins()),
                here.catalogueSource());
    }

    /** Where in the request as it was sent something stands that is at the given place of {@link #request}. */
    String pointer(String there) {
        if (within(CODE_BASIS, there)
                || mains != null && within(MAINS, there)
                || installation != null && within(INSTALLATION, there)) {
            return "/otherMarket" + there.replaceFirst("^/design", "");
        }
        return there;
    }

    private static boolean within(String place, String pointer) {
        return pointer.equals(place) || pointer.startsWith(place + "/");
    }
}
