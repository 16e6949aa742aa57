package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.Member;
import java.util.List;

/** The values of a small object with fixed member names. */
final class Parts {

    private Parts() {}

    /** The values in the order of the names, null literals for absent ones; notes unknown and repeated members. */
    static Json[] of(JsonObject object, List<String> names, Path path, Faults faults) {
        Json[] values = new Json[names.size()];
        for (Member member : object.members()) {
            int index = names.indexOf(member.name());
            if (index < 0) {
                RecordReading.unknown(faults, path, member, "the members " + String.join(", ", names));
            } else if (values[index] != null) {
                RecordReading.duplicate(faults, path.member(member.name()), member);
            } else {
                values[index] = member.value();
            }
        }
        for (int k = 0; k < values.length; k++) {
            if (values[k] == null) {
                values[k] = new JsonNull();
            }
        }
        return values;
    }
}
