package io.axiswright.engine.memory;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Answers that pure functions gave, for studies of designs that differ little from each other: what a difference does not touch is asked
 * with an equal question again, and has its answer already. Whether there is a memory or not changes no answer. For one thread.
 *
 * <p>Questions are compared, never hashed: a record with as much in it as a question is soon found equal to one it shares its parts
 * with, and unequal where the first part differs. So that only few are compared they are kept by the name of what they ask about, and
 * of each name the last few.
 */
public final class Memory {

    /** Remembers nothing. */
    public static final Memory NONE = new Memory(0);

    /**
     * Answers kept of one name. Of two designs and a change put into either, an axis has two states, and so have what else it follows
     * from: its stop zone, the mains, the site.
     */
    private static final int MOST = 16;

    private record Name(Class<?> kind, String name) {}

    private record Known(Object question, Object answer) {}

    private final int most;

    /** Of every name the last one asked for is the last one listed. */
    private final Map<Name, List<Known>> known = new HashMap<>();

    /** A memory that has nothing in it yet. */
    public Memory() {
        this(MOST);
    }

    private Memory(int most) {
        this.most = most;
    }

    /** The answer to a question of which there is but one in each study. */
    public <Q extends Record, A> A recall(Class<A> kind, Q question, Function<? super Q, ? extends A> answering) {
        return recall(kind, "", question, answering);
    }

    /**
     * The answer to a question: as it was given to an equal one, else as the function gives it.
     *
     * @param kind what the answer is; answers of one kind come from one function
     * @param name what the question is about, among those of the kind
     * @param question all that the answer follows from
     * @param answering a function of the question alone
     */
    public <Q extends Record, A> A recall(
            Class<A> kind, String name, Q question, Function<? super Q, ? extends A> answering) {
        if (most == 0) {
            return answering.apply(question);
        }
        List<Known> answers = known.computeIfAbsent(new Name(kind, name), _ -> new ArrayList<>());
        Known found = take(answers, question);
        if (found == null) {
            found = new Known(question, answering.apply(question));
            if (answers.size() == most) {
                answers.removeFirst();
            }
        }
        answers.addLast(found);
        return kind.cast(found.answer());
    }

    private static @Nullable Known take(List<Known> answers, Object question) {
        for (int k = answers.size() - 1; k >= 0; k--) {
            if (answers.get(k).question().equals(question)) {
                return answers.remove(k);
            }
        }
        return null;
    }
}
