package io.axiswright.engine.study;

import io.axiswright.engine.design.Installation;
import io.axiswright.engine.finding.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where in the request of a study its circuits come from. The conductor discipline points into the list of circuits it is
 * asked about, which a caller of a study never sees.
 *
 * @param places JSON Pointer, for each of those circuits, to what it follows from: the mains, or its first load
 */
record CircuitPlaces(List<String> places) {

    private static final Pattern CIRCUIT = Pattern.compile("/circuits/(\\d+)(?:/(\\w+))?");

    /** The finding about one of the circuits, pointing into the request of the study. */
    Finding inStudy(Finding f) {
        return f.at(place(f.pointer()));
    }

    private String place(String pointer) {
        Matcher circuit = CIRCUIT.matcher(pointer);
        if (!circuit.matches()) {
            return pointer;
        }
        String member = circuit.group(2);
        return member != null && isOfInstallation(member)
                ? "/design/installation/" + member
                : places.get(Integer.parseInt(circuit.group(1)));
    }

    /** A circuit takes over what the design says of its installation, under the same name. */
    private static boolean isOfInstallation(String member) {
        return Arrays.stream(Installation.class.getRecordComponents())
                .anyMatch(component -> component.getName().equals(member));
    }
}
