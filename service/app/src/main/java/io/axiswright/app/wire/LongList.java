package io.axiswright.app.wire;

import io.axiswright.app.wire.Json.JsonArray;
import io.axiswright.app.wire.Json.JsonNumber;
import io.axiswright.app.wire.Json.JsonObject;
import io.axiswright.app.wire.Json.Member;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/**
 * A document with a list whose elements together may be too much to hold: it lies in a file, where the elements are read one at
 * a time, by as many threads as like.
 */
public final class LongList implements AutoCloseable {

    /** Members beyond these are not kept: the document is refused anyway, and they may be millions. */
    private static final int MOST_MEMBERS = 1000;

    /** Where an element stands in the file. */
    private record Span(long start, long end) {}

    private final String name;
    private final int most;
    private final Path file;
    private final List<Span> elements = new ArrayList<>();
    private final Json frame;
    private final FileChannel channel;

    private LongList(Path file, String name, int most) throws IOException {
        this.file = file;
        this.name = name;
        this.most = most;
        try (var in = new BufferedInputStream(Files.newInputStream(file))) {
            this.frame = JsonDocument.parse(in, this::frame);
        }
        this.channel = FileChannel.open(file);
    }

    /**
     * Takes a document in, to its end.
     *
     * @param name the member that is the list
     * @param most so many of its elements can be read
     * @throws MalformedJson if it is not JSON in UTF-8
     * @throws BodyTooLarge if it is longer than bodies may be
     * @throws IOException if it breaks off, or there is no room for it
     */
    public static LongList of(InputStream document, String name, int most) throws IOException {
        Path file = Files.createTempFile("axiswright-list", ".json");
        try {
            try (var out = Files.newOutputStream(file)) {
                document.transferTo(out);
            }
            return new LongList(file, name, most);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    /**
     * Judges the document with a zero in place of each element of its list, and says how many there are.
     *
     * @param type what the document is to be
     * @throws io.axiswright.engine.finding.InvalidDesign if it has another form; with all its faults
     */
    public int require(Class<?> type) {
        RecordReader.read(frame, type);
        return elements.size();
    }

    /**
     * The document that an element is.
     *
     * @throws BodyTooLarge if it has more bytes than the limit
     */
    public byte[] element(int index, long limit) {
        Span span = elements.get(index);
        long length = span.end() - span.start();
        if (length > limit) {
            throw new BodyTooLarge(limit);
        }
        var bytes = ByteBuffer.allocate((int) length);
        try {
            while (bytes.hasRemaining() && channel.read(bytes, span.start() + bytes.position()) > 0) {
                // a read may bring less than there is room for
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.array();
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }

    private Json frame(JsonParser parser) {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            return outline(parser);
        }
        var members = new ArrayList<Member>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String member = parser.currentName();
            boolean list = parser.nextToken() == JsonToken.START_ARRAY && member.equals(name);
            Json value = list ? list(parser) : outline(parser);
            if (members.size() < MOST_MEMBERS) {
                members.add(new Member(member, value));
            }
        }
        return new JsonObject(members);
    }

    private Json list(JsonParser parser) {
        int count = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            long start = parser.currentTokenLocation().getByteOffset();
            long end = end(parser, start);
            if (count++ < most) {
                elements.add(new Span(start, end));
            }
        }
        return new JsonArray(Collections.nCopies(count, new JsonNumber("0")));
    }

    /** Where the present value ends; reads on to there. */
    private static long end(JsonParser parser, long start) {
        if (parser.currentToken().isNumeric()
                || parser.currentToken().isBoolean()
                || parser.currentToken() == JsonToken.VALUE_NULL) {
            // what follows may have been looked at already; these are ASCII
            return start + parser.getString().length();
        }
        outline(parser);
        return parser.currentLocation().getByteOffset();
    }

    /** The present value without what is in it. */
    private static Json outline(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                parser.skipChildren();
                yield new JsonObject(List.of());
            }
            case START_ARRAY -> {
                parser.skipChildren();
                yield new JsonArray(List.of());
            }
            default -> JsonDocument.value(parser);
        };
    }
}
