package io.axiswright.app.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.UUID;

/**
 * Where a page ended: opaque to the caller, who sends back what {@code next} gave.
 *
 * @param position the last element's key, or its number in the low half
 */
@Schema(type = "string", description = "Opaque; taken from the link to the next page.")
public record Cursor(UUID position) {

    /** The end at a numbered element. */
    public static Cursor at(int number) {
        return new Cursor(new UUID(0, number));
    }

    /** The number it stands at. */
    public int number() {
        return (int) position.getLeastSignificantBits();
    }

    /**
     * Reads what {@link #toString} wrote; called by Spring for request parameters.
     *
     * @throws IllegalArgumentException if the text is not a cursor of ours
     */
    public static Cursor valueOf(String text) {
        ByteBuffer bytes = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
        if (bytes.remaining() != 2 * Long.BYTES) {
            throw new IllegalArgumentException("not a cursor of this service");
        }
        return new Cursor(new UUID(bytes.getLong(), bytes.getLong()));
    }

    @Override
    public String toString() {
        ByteBuffer bytes = ByteBuffer.allocate(2 * Long.BYTES)
                .putLong(position.getMostSignificantBits())
                .putLong(position.getLeastSignificantBits());
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.array());
    }
}
