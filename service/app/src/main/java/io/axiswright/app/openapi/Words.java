package io.axiswright.app.openapi;

import com.github.therapi.runtimejavadoc.ClassJavadoc;
import com.github.therapi.runtimejavadoc.Comment;
import com.github.therapi.runtimejavadoc.CommentElement;
import com.github.therapi.runtimejavadoc.CommentText;
import com.github.therapi.runtimejavadoc.InlineLink;
import com.github.therapi.runtimejavadoc.InlineTag;
import com.github.therapi.runtimejavadoc.RuntimeJavadoc;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** The Javadoc of our types, kept beside the classes by the compiler, as plain text on one line. */
final class Words {

    private Words() {}

    /** What a type is; null if nothing is said. */
    static @Nullable String of(Class<?> type) {
        return text(javadoc(type).getComment());
    }

    /** What a component of a record is; null if nothing is said. */
    static @Nullable String ofComponent(Class<?> type, String name) {
        return javadoc(type).getRecordComponents().stream()
                .filter(component -> component.getName().equals(name))
                .findFirst()
                .map(component -> text(component.getComment()))
                .orElse(null);
    }

    /** What a constant of an enum means; null if nothing is said. */
    static @Nullable String ofConstant(Class<?> type, String name) {
        return javadoc(type).getEnumConstants().stream()
                .filter(constant -> constant.getName().equals(name))
                .findFirst()
                .map(constant -> text(constant.getComment()))
                .orElse(null);
    }

    private static ClassJavadoc javadoc(Class<?> type) {
        return RuntimeJavadoc.getJavadoc(type);
    }

    private static @Nullable String text(Comment comment) {
        String text = StreamSupport.stream(comment.spliterator(), false)
                .map(Words::text)
                .collect(Collectors.joining())
                .replaceAll("\\s+", " ")
                .strip();
        return text.isEmpty() ? null : text;
    }

    private static String text(CommentElement element) {
        return switch (element) {
            case CommentText plain -> plain.getValue();
            case InlineTag tag -> tag.getValue();
            case InlineLink link -> link.getLink().getLabel();
            default -> "";
        };
    }
}
