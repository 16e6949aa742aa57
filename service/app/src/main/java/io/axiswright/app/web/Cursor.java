package io.axiswright.app.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.CRC32;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * Where a page ended: opaque to the caller, who sends back what {@code next} gave. It bears a mark of its list, so that it is not
 * taken for a place in another one.
 *
 * @param position the last element's key, or its number in the low half
 */
@Schema(type = "string", description = "Opaque; taken from the link to the next page of the same list.")
public record Cursor(UUID position) {

    private static final int LENGTH = 2 * Long.BYTES + Integer.BYTES;

    /** The end at a numbered element. */
    public static Cursor at(int number) {
        return new Cursor(new UUID(0, number));
    }

    /** The number it stands at. */
    public int number() {
        return (int) position.getLeastSignificantBits();
    }

    /**
     * Reads what {@link #text} wrote for the list of the current request; called by Spring for request parameters.
     *
     * @throws IllegalArgumentException if the text is not a cursor of that list
     */
    public static Cursor valueOf(String text) {
        ByteBuffer bytes = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
        if (bytes.remaining() != LENGTH) {
            throw new IllegalArgumentException("not a cursor of this service");
        }
        var cursor = new Cursor(new UUID(bytes.getLong(), bytes.getLong()));
        if (bytes.getInt() != currentList()) {
            throw new IllegalArgumentException("a cursor of another list");
        }
        return cursor;
    }

    /** The cursor as it stands in addresses of the list that the current request asks for. */
    String text() {
        ByteBuffer bytes = ByteBuffer.allocate(LENGTH)
                .putLong(position.getMostSignificantBits())
                .putLong(position.getLeastSignificantBits())
                .putInt(currentList());
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.array());
    }

    /** A mark of the list that the current request asks for: of its path and parameters, but for those that choose the page. */
    private static int currentList() {
        var page = ServletUriComponentsBuilder.fromCurrentRequest().build();
        var parameters = new TreeMap<>(page.getQueryParams());
        parameters.remove("cursor");
        parameters.remove("limit");
        var mark = new CRC32();
        mark.update((page.getPath() + '?' + parameters).getBytes(StandardCharsets.UTF_8));
        return (int) mark.getValue();
    }
}
