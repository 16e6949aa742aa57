package io.axiswright.app.wire;

/** A body of more bytes than the service takes. */
public final class BodyTooLarge extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final long limit;

    /** A body of more than so many bytes. */
    public BodyTooLarge(long limit) {
        super("more than " + limit + " bytes");
        this.limit = limit;
    }

    /** How many bytes are taken. */
    public long limit() {
        return limit;
    }
}
