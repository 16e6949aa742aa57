package io.axiswright.engine.comparison;

import io.axiswright.engine.design.Design;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What became of the parts of one design that have no namesake in another: one stands there under another id, or two in its
 * place, or the other way round. From the second design to the first it is the inverse: renames are turned round, and splits are merges.
 *
 * @param renames parts under another id
 * @param splits parts of the first design that became two
 * @param merges parts of the second design that two became
 */
record Recognition(List<Rename> renames, List<Division> splits, List<Division> merges) {

    /** From the first design to the second, kind by kind. */
    static Recognition between(Design before, Design after) {
        Map<NamedPart, Recognition> found = new EnumMap<>(NamedPart.class);
        Design renamed = before;
        // what others refer to comes first, so that a new name of it is no difference of theirs
        for (NamedPart what : List.of(NamedPart.values()).reversed()) {
            Recognition ofKind = of(what, renamed, after);
            found.put(what, ofKind);
            renamed = Renames.applied(ofKind.renames, renamed);
        }
        List<Recognition> all = List.copyOf(found.values());
        return new Recognition(
                all.stream().flatMap(kind -> kind.renames.stream()).toList(),
                all.stream().flatMap(kind -> kind.splits.stream()).toList(),
                all.stream().flatMap(kind -> kind.merges.stream()).toList());
    }

    private static Recognition of(NamedPart what, Design before, Design after) {
        Unmatched unmatched = Unmatched.of(what, before, after);
        List<Sharing> splits = sharings(what, before, unmatched.gone(), after, unmatched.come());
        List<Sharing> merges = sharings(what, after, unmatched.come(), before, unmatched.gone());
        List<Rename> renames = Renames.among(what, unmatched);
        Map<String, Integer> claims = claims(splits, merges);
        splits = splits.stream().filter(split -> holds(split, claims, renames)).toList();
        merges = merges.stream().filter(merge -> holds(merge, claims, renames)).toList();
        Set<String> divided = new HashSet<>();
        Stream.concat(splits.stream(), merges.stream()).forEach(sharing -> divided.addAll(sharing.ids()));
        return new Recognition(
                divided.isEmpty() ? renames : Renames.among(what, unmatched.without(divided)),
                splits.stream().map(split -> Division.split(what, split)).toList(),
                merges.stream().map(merge -> Division.merge(what, merge)).toList());
    }

    private static List<Sharing> sharings(
            NamedPart what, Design one, Map<String, Members> wholes, Design other, Map<String, Members> parts) {
        return what == NamedPart.AXIS
                ? SharedMasses.of(wholes, parts)
                : SharedReferences.of(what, wholes.keySet(), one, parts.keySet(), other);
    }

    /** How many splits and merges each part would take part in. */
    private static Map<String, Integer> claims(List<Sharing> splits, List<Sharing> merges) {
        Map<String, Integer> claims = new HashMap<>();
        Stream.concat(splits.stream(), merges.stream())
                .flatMap(sharing -> sharing.ids().stream())
                .forEach(id -> claims.merge(id, 1, Integer::sum));
        return claims;
    }

    /** Whether nobody else claims its parts: no other split or merge, and no part outside is more like one of them. */
    private static boolean holds(Sharing sharing, Map<String, Integer> claims, List<Rename> renames) {
        List<String> ids = sharing.ids();
        return ids.stream().allMatch(id -> Integer.valueOf(1).equals(claims.get(id)))
                && renames.stream().allMatch(rename -> ids.contains(rename.before()) == ids.contains(rename.after()));
    }
}
