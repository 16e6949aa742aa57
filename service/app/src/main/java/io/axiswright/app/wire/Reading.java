package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.Member;
import io.axiswright.engine.finding.FaultCode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One pass over one document. A null from any method means: a fault was noted, there is no value. */
final class Reading {

    private final Faults faults;
    private final LeafReading leaves;
    private final RecordReading records;

    Reading(Faults faults) {
        this.faults = faults;
        this.leaves = new LeafReading(faults);
        this.records = new RecordReading(faults, this);
    }

    @Nullable
    Object value(Json json, Shape shape, Path path) {
        if (json instanceof JsonNull && !(shape instanceof Shape.Any)) {
            faults.add(path, FaultCode.MISSING, "There is null, but a value is needed.", Acceptable.of(shape));
            return null;
        }
        return switch (shape) {
            case RecordShape record -> records.record(json, record, null, path);
            case Shape.Choice choice -> records.choice(json, choice, path);
            case Shape.Many many -> list(json, many, path);
            case Shape.Table table -> table(json, table, path);
            case Shape.Leaf leaf -> leaves.leaf(json, leaf, path);
        };
    }

    private @Nullable Object list(Json json, Shape.Many many, Path path) {
        if (!(json instanceof JsonArray(List<Json> elements))) {
            faults.add(path, FaultCode.WRONG_TYPE, "Not a list, but " + json.inWords() + ".", Acceptable.of(many));
            return null;
        }
        if (elements.size() < many.min() || elements.size() > many.max()) {
            faults.add(
                    path,
                    FaultCode.WRONG_COUNT,
                    "The list has " + elements.size() + " elements.",
                    "from " + many.min() + " to " + many.max() + " elements");
            // what stands in an overlong list is not judged: it may be millions of faults
            if (elements.size() > many.max()) {
                return null;
            }
        }
        var values = new ArrayList<@Nullable Object>(elements.size());
        for (int k = 0; k < elements.size(); k++) {
            values.add(value(elements.get(k), many.element(), path.element(k)));
        }
        return Collections.unmodifiableList(values);
    }

    private @Nullable Object table(Json json, Shape.Table table, Path path) {
        if (!(json instanceof JsonObject(List<Member> members))) {
            faults.add(path, FaultCode.WRONG_TYPE, "Not an object, but " + json.inWords() + ".", Acceptable.of(table));
            return null;
        }
        var values = new LinkedHashMap<String, @Nullable Object>();
        for (Member member : members) {
            Path at = path.member(member.name());
            if (values.containsKey(member.name())) {
                RecordReading.duplicate(faults, at, member);
            } else {
                values.put(member.name(), value(member.value(), table.value(), at));
            }
        }
        return Collections.unmodifiableSequencedMap(values);
    }
}
