package io.axiswright.app.wire;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;

/** Gives a handler its body: every record of ours that a controller asks for is read by {@link RecordReader}. */
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
        return false;
    }

    @Override
    public List<MediaType> getSupportedMediaTypes() {
        return JSON;
    }

    @Override
    public Object read(Class<?> type, HttpInputMessage message) throws IOException {
        return RecordReader.read(message.getBody().readAllBytes(), type);
    }

    @Override
    public void write(Object value, @Nullable MediaType mediaType, HttpOutputMessage message) {
        throw new IllegalStateException("answers are written by the mapper");
    }
}
