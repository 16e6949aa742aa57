package io.axiswright.app.report;

import io.axiswright.engine.bill.BillResult;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.HttpOutputMessage;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;

/** Writes a bill in the form the caller accepts, with its digest; of this day (UTC) unless it has a day of its own. */
final class BillConverter implements HttpMessageConverter<Object> {

    private static final String REPR_DIGEST = "Repr-Digest";

    @Override
    public boolean canRead(Class<?> type, @Nullable MediaType mediaType) {
        return false;
    }

    @Override
    public boolean canWrite(Class<?> type, @Nullable MediaType mediaType) {
        return (type == BillResult.class || type == DatedBill.class)
                && format(mediaType).isPresent();
    }

    private static Optional<BillFormat> format(@Nullable MediaType mediaType) {
        return Arrays.stream(BillFormat.values())
                .filter(format -> mediaType == null || format.type().isCompatibleWith(mediaType))
                .findFirst();
    }

    @Override
    public List<MediaType> getSupportedMediaTypes() {
        return Arrays.stream(BillFormat.values()).map(BillFormat::type).toList();
    }

    @Override
    public Object read(Class<?> type, HttpInputMessage message) {
        throw new UnsupportedOperationException("bills are only written");
    }

    @Override
    public void write(Object answer, @Nullable MediaType mediaType, HttpOutputMessage message) throws IOException {
        DatedBill dated = answer instanceof DatedBill own
                ? own
                : new DatedBill((BillResult) answer, LocalDate.now(ZoneOffset.UTC));
        BillFormat format = format(mediaType).orElseThrow();
        byte[] bytes = format.write(dated.bill(), dated.day());
        var headers = message.getHeaders();
        headers.setContentType(format.type());
        headers.setContentLength(bytes.length);
        headers.set(REPR_DIGEST, Digest.header(bytes));
        message.getBody().write(bytes);
    }
}
