package io.axiswright.app.problem;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The kinds of failure. A kind, once released, keeps its name and its status. */
public enum ProblemKind {
    /** The body is not JSON. */
    MALFORMED_JSON(
            400,
            "The body is not JSON",
            "The body cannot be parsed, or is missing. The detail names line and column where reading stopped. Correct the JSON."),
    /** A query or path parameter, or a header, is wrong. */
    INVALID_PARAMETER(
            400,
            "A parameter or header is missing or wrong",
            "A query parameter, a path variable or a header is missing or has no meaning; each is named in errors."),
    /** Anything else wrong with the request line or headers. */
    BAD_REQUEST(400, "The request is not well formed", "The request cannot be understood as HTTP."),
    /** No credentials. */
    UNAUTHENTICATED(401, "Credentials are needed", "The request carries no valid credentials."),
    /** Credentials without the right. */
    FORBIDDEN(403, "Not allowed", "The credentials do not give the right to do this."),
    /** No such resource. */
    NOT_FOUND(404, "Nothing is there", "The path or the resource it names does not exist, or is not visible to you."),
    /** The path does not take this method. */
    METHOD_NOT_ALLOWED(405, "The method is not allowed here", "The header Allow lists the methods this path takes."),
    /** None of the asked media types is served. */
    NOT_ACCEPTABLE(
            406, "No acceptable form of the answer", "The header Accept names no media type that this path serves."),
    /** The state of the resource forbids it. */
    CONFLICT(409, "In conflict with what is there", "The request contradicts the present state; the detail says how."),
    /** The first request of the same idempotency key has not ended. */
    REQUEST_IN_PROGRESS(
            409,
            "The same request is being worked on",
            "A request with the same Idempotency-Key has not ended yet. Send it again after the time in the header Retry-After; it is then answered as the first one was."),
    /** If-Match names another version. */
    PRECONDITION_FAILED(
            412,
            "Changed in the meantime",
            "The version named in If-Match is not the present one. Read the resource again and repeat the change on it."),
    /** The body is too large. */
    BODY_TOO_LARGE(
            413,
            "The body is too large",
            "The body has more bytes than the service takes; the detail states the limit."),
    /** The body's media type is not read. */
    UNSUPPORTED_MEDIA_TYPE(
            415,
            "The media type of the body is not read",
            "The header Accept lists the media types this path reads; where a content coding is the reason, Accept-Encoding those it reads."),
    /** The document cannot be given a meaning. */
    INVALID_DESIGN(
            422,
            "The document has no meaning",
            "The body is JSON, but members are unknown, missing, of the wrong type or unit, out of range, or contradict each other. Every fault is listed in errors with a JSON Pointer to its place. A system that can be described but not built is not a fault: it is answered with findings."),
    /** An idempotency key came with another request. */
    IDEMPOTENCY_KEY_REUSED(
            422,
            "The idempotency key belongs to another request",
            "The same Idempotency-Key was used with a different request. Use a new key for a new request."),
    /** If-Match is missing. */
    PRECONDITION_REQUIRED(
            428,
            "If-Match is needed",
            "A change must name in If-Match the ETag of the version it starts from, so that no update is lost."),
    /** Too many requests. */
    TOO_MANY_REQUESTS(429, "Too many requests", "The quota is used up; the header Retry-After says when to try again."),
    /** Our fault. */
    INTERNAL(
            500,
            "The service failed",
            "The failure is ours. It is recorded under the traceId; name it when you report the failure."),
    /** Overloaded, or what it stands on is away. */
    UNAVAILABLE(503, "Not available at the moment", "Try again later; the header Retry-After may say when.");

    private final int status;
    private final String title;
    private final String description;

    ProblemKind(int status, String title, String description) {
        this.status = status;
        this.title = title;
        this.description = description;
    }

    /** The HTTP status it is answered with. */
    public int status() {
        return status;
    }

    /** What it is called. */
    public String title() {
        return title;
    }

    /** What it means and what to do. */
    public String description() {
        return description;
    }

    /** The last part of its address: {@code invalid-design}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The problem type: a stable reference, relative to the service, at which the kind is described. */
    public String type() {
        return "/problems/" + slug();
    }

    /** The kind of that slug. */
    static Optional<ProblemKind> find(String slug) {
        return Stream.of(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
    }

    /** The kind that stands for a status nobody has told more about. */
    static ProblemKind ofStatus(int status) {
        // methods and versions of HTTP that nobody knows are no failures of ours, whatever their number
        if (status == BAD_REQUEST.status || status == 501 || status == 505) {
            return BAD_REQUEST;
        }
        return Stream.of(values())
                .filter(kind -> kind.status == status)
                .findFirst()
                .orElse(status >= 500 ? INTERNAL : BAD_REQUEST);
    }
}
