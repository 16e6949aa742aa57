package io.axiswright.app.wire;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;

/**
 * The bodies of our records: read by {@link RecordReader}, written in one piece. An answer of known length needs no chunks,
 * and one that cannot be written fails before its first byte is sent.
 */
final class RecordBodyConverter implements HttpMessageConverter<Object> {

    private static final String OURS = "io.axiswright.";
    private static final List<MediaType> JSON =
            List.of(MediaType.APPLICATION_JSON, new MediaType("application", "*+json"));

    @Override
    public boolean canRead(Class<?> type, @Nullable MediaType mediaType) {
        return type.getName().startsWith(OURS)
                && Shapes.isComposite(type)
                && (mediaType == null || JSON.stream().anyMatch(json -> json.includes(mediaType)));
    }

    @Override
    public boolean canWrite(Class<?> type, @Nullable MediaType mediaType) {
        return type.getName().startsWith(OURS)
                && type.isRecord()
                && (mediaType == null || JSON.stream().anyMatch(json -> json.isCompatibleWith(mediaType)));
    }

    @Override
    public List<MediaType> getSupportedMediaTypes() {
        return JSON;
    }

    @Override
    public Object read(Class<?> type, HttpInputMessage message) throws IOException {
        long length = message.getHeaders().getContentLength();
        // a body of known length needs no room beyond it
        byte[] body = length < 0 || length > Integer.MAX_VALUE
                ? message.getBody().readAllBytes()
                : message.getBody().readNBytes((int) length);
        return RecordReader.read(body, type);
    }

    @Override
    public void write(Object value, @Nullable MediaType mediaType, HttpOutputMessage message) throws IOException {
        ByteArrayOutputStream bytes = RecordWriter.buffer(value);
        HttpHeaders headers = message.getHeaders();
        if (headers.getContentType() == null) {
            headers.setContentType(
                    mediaType == null || !mediaType.isConcrete() ? MediaType.APPLICATION_JSON : mediaType);
        }
        headers.setContentLength(bytes.size());
        bytes.writeTo(message.getBody());
    }
}
