package io.axiswright.app.project;

import io.axiswright.app.problem.Conflict;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.store.Attempts;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/** Puts labels to revisions and takes them away, as long as the revision is not released. */
@Service
class Labelling {

    private final Revisions revisions;
    private final RevisionLabels labels;
    private final EntityManager entities;
    private final Attempts attempts;
    private final Clock clock;

    Labelling(Revisions revisions, RevisionLabels labels, EntityManager entities, Attempts attempts, Clock clock) {
        this.revisions = revisions;
        this.labels = labels;
        this.entities = entities;
        this.attempts = attempts;
        this.clock = clock;
    }

    /**
     * Puts a label to a revision; one that is there already stays as it is.
     *
     * @throws NotFound if there is no such revision
     * @throws Conflict if it is released and has no such label
     */
    RevisionSummary put(UUID project, int number, String name, NewLabel request) {
        return change(project, number, present -> {
            if (present.stream().anyMatch(label -> label.name().equals(name))) {
                return present;
            }
            requireOpen(number, present);
            var label = new Label(name, request.author(), clock.instant());
            entities.persist(new RevisionLabel(project, number, label));
            List<Label> all = new ArrayList<>(present);
            all.add(label);
            return all;
        });
    }

    /**
     * Takes a label away; one that is not there needs nothing done.
     *
     * @throws NotFound if there is no such revision
     * @throws Conflict if it is released and has the label
     */
    RevisionSummary take(UUID project, int number, String name) {
        return change(project, number, present -> {
            if (present.stream().noneMatch(label -> label.name().equals(name))) {
                return present;
            }
            requireOpen(number, present);
            labels.remove(project, number, name);
            return present.stream().filter(label -> !label.name().equals(name)).toList();
        });
    }

    /** The labels of some revisions of a project by the revisions' numbers. */
    Map<Integer, List<Label>> of(UUID project, List<Integer> numbers) {
        return numbers.isEmpty()
                ? Map.of()
                : labels.of(project, numbers).stream()
                        .collect(Collectors.groupingBy(
                                RevisionLabel::number, Collectors.mapping(RevisionLabel::label, Collectors.toList())));
    }

    private RevisionSummary change(UUID project, int number, UnaryOperator<List<Label>> change) {
        return attempts.write(() -> {
            RevisionEntry entry = labels.lock(project, number)
                    .flatMap(locked -> revisions.entry(project, locked))
                    .orElseThrow(() -> RevisionReader.noRevision(project, number));
            List<Label> present = of(project, List.of(number)).getOrDefault(number, List.of());
            return RevisionSummary.of(entry, change.apply(present));
        });
    }

    private static void requireOpen(int number, List<Label> present) {
        if (present.stream().anyMatch(label -> label.name().equals(Label.RELEASED))) {
            throw new Conflict("Revision " + number + " is released: its labels stay as they are.");
        }
    }
}
