package io.axiswright.app.problem;

import io.axiswright.app.wire.MalformedJson;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingPathVariableException;
import org.springframework.web.bind.MissingRequestHeaderException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.server.ResponseStatusException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DatabindException;

/** A failure of the framework, in our words: its own texts may name classes. */
record SpringFailure(ProblemKind kind, String detail, List<ProblemError> errors) {

    static SpringFailure of(Exception e, HttpStatusCode status) {
        return switch (e) {
            case HttpMessageNotReadableException unreadable -> unreadable(unreadable);
            case MissingServletRequestParameterException missing -> missingParameter(missing.getParameterName());
            case MissingPathVariableException missing -> missingParameter(missing.getVariableName());
            case MissingRequestHeaderException missing -> missingHeader(missing.getHeaderName());
            case TypeMismatchException mismatch -> mismatch(mismatch);
            case MethodArgumentNotValidException invalid -> BeanFaults.of(invalid);
            case HandlerMethodValidationException invalid -> BeanFaults.of(invalid);
            case HttpRequestMethodNotSupportedException method ->
                plain(ProblemKind.METHOD_NOT_ALLOWED, "This path does not take " + method.getMethod() + ".");
            case HttpMediaTypeNotSupportedException media ->
                plain(
                        ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                        "This path does not read " + named(media.getContentType()) + "; it reads "
                                + list(media.getSupportedMediaTypes()) + ".");
            case HttpMediaTypeNotAcceptableException media ->
                plain(
                        ProblemKind.NOT_ACCEPTABLE,
                        media.getSupportedMediaTypes().isEmpty()
                                ? "The header Accept is no list of media types."
                                : "This path serves " + list(media.getSupportedMediaTypes()) + ".");
            case ResponseStatusException chosen
            when chosen.getReason() != null -> plain(ProblemKind.ofStatus(status.value()), chosen.getReason());
            default -> ofStatus(status);
        };
    }

    private static SpringFailure ofStatus(HttpStatusCode status) {
        ProblemKind kind = ProblemKind.ofStatus(status.value());
        return plain(kind, kind == ProblemKind.NOT_FOUND ? "Nothing is at this path." : kind.title() + ".");
    }

    private static SpringFailure unreadable(HttpMessageNotReadableException e) {
        return switch (e.getCause()) {
            case DatabindException bind ->
                plain(
                        ProblemKind.INVALID_DESIGN,
                        "The body does not have the form this path needs" + place(bind) + ".");
            case JacksonException json ->
                plain(ProblemKind.MALFORMED_JSON, MalformedJson.of(json).inWords());
            case null, default -> plain(ProblemKind.MALFORMED_JSON, "The body is missing or cannot be read.");
        };
    }

    private static String place(DatabindException e) {
        String pointer = e.getPath().stream()
                .map(at -> at.getPropertyName() == null ? Integer.toString(at.getIndex()) : at.getPropertyName())
                .map(name -> "/" + name.replace("~", "~0").replace("/", "~1"))
                .collect(Collectors.joining());
        return pointer.isEmpty() ? "" : ", at " + pointer;
    }

    private static SpringFailure missingParameter(String name) {
        return one(ProblemError.ofParameter(name, "MISSING", "There is no " + name + ".", null));
    }

    private static SpringFailure missingHeader(String name) {
        return one(ProblemError.ofHeader(name, "MISSING", "There is no " + name + ".", null));
    }

    private static SpringFailure mismatch(TypeMismatchException e) {
        String name = String.valueOf(e.getPropertyName());
        String detail = "The value of " + name + " has no meaning there.";
        String accepted = accepted(e.getRequiredType());
        boolean header = e instanceof MethodArgumentTypeMismatchException argument
                && argument.getParameter().hasParameterAnnotation(RequestHeader.class);
        return one(
                header
                        ? ProblemError.ofHeader(name, "WRONG_TYPE", detail, accepted)
                        : ProblemError.ofParameter(name, "WRONG_TYPE", detail, accepted));
    }

    private static @Nullable String accepted(@Nullable Class<?> type) {
        if (type == null) {
            return null;
        }
        if (type.isEnum()) {
            return List.of(type.getEnumConstants()).stream()
                    .map(Object::toString)
                    .collect(Collectors.joining(", "));
        }
        return switch (type.getSimpleName()) {
            case "int", "Integer", "long", "Long" -> "a whole number";
            case "double", "Double", "BigDecimal" -> "a number";
            case "boolean", "Boolean" -> "true or false";
            case "UUID" -> "a UUID";
            case "ShortName" -> "1 to 50 lower-case letters, digits and hyphens, a letter or digit first";
            case "Limit" -> "a whole number from 1 to 100";
            case "Cursor" -> "what the link to the next page gave";
            case "IdempotencyKey" -> "a string in double quotes, 1 to 200 printable ASCII characters";
            case "Instant", "OffsetDateTime" -> "a time stamp of RFC 3339";
            default -> null;
        };
    }

    static SpringFailure one(ProblemError error) {
        return new SpringFailure(ProblemKind.INVALID_PARAMETER, error.detail(), List.of(error));
    }

    private static SpringFailure plain(ProblemKind kind, String detail) {
        return new SpringFailure(kind, detail, List.of());
    }

    private static String named(@Nullable MediaType type) {
        return type == null ? "a body without a media type that can be told" : type.toString();
    }

    private static String list(List<MediaType> types) {
        return types.isEmpty()
                ? "nothing"
                : types.stream().map(MediaType::toString).distinct().sorted().collect(Collectors.joining(", "));
    }
}
