package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonNull;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.JsonText;
import io.axiswright.app.wire.Json.Member;
import io.axiswright.app.wire.RecordShape.Presence;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads records, member by member in the order of the document. */
record RecordReading(Faults faults, Reading reading) {

    /** Reads the record whose kind one member names. */
    @Nullable
    Object choice(Json json, Shape.Choice choice, Path path) {
        if (!(json instanceof JsonObject(List<Member> members))) {
            return notAnObject(json, choice, path);
        }
        Json kind = members.stream()
                .filter(member -> member.name().equals(choice.discriminator()))
                .map(Member::value)
                .findFirst()
                .orElse(new JsonNull());
        RecordShape shape =
                kind instanceof JsonText(String word) ? choice.kinds().get(word) : null;
        if (shape == null) {
            noKind(kind, choice, path.member(choice.discriminator()));
            return null;
        }
        return record(json, shape, choice.discriminator(), path);
    }

    private void noKind(Json kind, Shape.Choice choice, Path at) {
        String accepted = Acceptable.words(choice.kinds().keySet());
        switch (kind) {
            case JsonNull _ ->
                faults.add(at, FaultCode.MISSING, "There is no " + choice.discriminator() + ".", accepted);
            case JsonText(String word) ->
                faults.add(at, FaultCode.UNKNOWN_VALUE, "Unknown: " + Excerpt.quoted(word) + ".", accepted);
            default -> faults.add(at, FaultCode.WRONG_TYPE, "Not a word, but " + kind.inWords() + ".", accepted);
        }
    }

    /** Reads a record; a discriminator that its choice has already read may stand among its members. */
    @Nullable
    Object record(Json json, RecordShape shape, @Nullable String discriminator, Path path) {
        if (!(json instanceof JsonObject(List<Member> members))) {
            return notAnObject(json, shape, path);
        }
        int before = faults.count();
        @Nullable Object[] values = new Object[shape.members().size()];
        boolean[] seen = new boolean[values.length];
        boolean kindSeen = false;
        for (Member member : members) {
            Integer index = shape.index(member.name());
            if (index != null) {
                if (seen[index]) {
                    duplicate(faults, path.member(member.name()), member);
                } else {
                    seen[index] = true;
                    values[index] = member(member.value(), shape.members().get(index), path);
                }
            } else if (member.name().equals(discriminator) && !kindSeen) {
                kindSeen = true;
            } else if (member.name().equals(discriminator)) {
                duplicate(faults, path.member(member.name()), member);
            } else {
                unknown(faults, path, member, shape.accepted());
            }
        }
        absent(shape, seen, values, path);
        return faults.count() == before ? make(shape, values, path) : null;
    }

    private @Nullable Object member(Json json, RecordShape.Member member, Path path) {
        if (json instanceof JsonNull && !mustBeThere(member)) {
            return member.presence().absent();
        }
        return reading.value(json, member.shape(), path.member(member.name()));
    }

    private void absent(RecordShape shape, boolean[] seen, @Nullable Object[] values, Path path) {
        for (int k = 0; k < values.length; k++) {
            RecordShape.Member member = shape.members().get(k);
            if (seen[k]) {
                continue;
            }
            values[k] = member.presence().absent();
            if (mustBeThere(member)) {
                faults.add(
                        path.member(member.name()),
                        FaultCode.MISSING,
                        "There is no " + member.name() + ".",
                        Acceptable.of(member.shape()));
            }
        }
    }

    /** An absent list is an empty one, which may be too short. */
    private static boolean mustBeThere(RecordShape.Member member) {
        boolean tooFew = member.shape() instanceof Shape.Many many && many.min() > 0;
        return member.presence() == Presence.REQUIRED || member.presence() == Presence.EMPTY && tooFew;
    }

    private @Nullable Object make(RecordShape shape, @Nullable Object[] values, Path path) {
        try {
            return shape.make(values);
        } catch (InvalidDesign e) {
            faults.addAll(path.pointer(), e);
        } catch (IllegalArgumentException e) {
            faults.add(
                    path,
                    FaultCode.INCONSISTENT,
                    Objects.requireNonNullElse(e.getMessage(), "The members contradict each other."),
                    "members that agree with each other");
        }
        return null;
    }

    private @Nullable Object notAnObject(Json json, Shape shape, Path path) {
        faults.add(path, FaultCode.WRONG_TYPE, "Not an object, but " + json.inWords() + ".", Acceptable.of(shape));
        return null;
    }

    /** Notes a member that nothing reads. */
    static void unknown(Faults faults, Path path, Member member, String accepted) {
        faults.add(
                path.member(member.name()),
                FaultCode.UNKNOWN_MEMBER,
                "Nothing reads a member " + Excerpt.quoted(member.name()) + ".",
                accepted);
    }

    /** Notes a member that stands twice. */
    static void duplicate(Faults faults, Path at, Member member) {
        faults.add(
                at,
                FaultCode.DUPLICATE_MEMBER,
                "The member " + Excerpt.quoted(member.name()) + " stands more than once, here as "
                        + member.value().inWords() + ".",
                "each member once");
    }
}
