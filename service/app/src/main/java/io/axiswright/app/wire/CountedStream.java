package io.axiswright.app.wire;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import java.io.IOException;

/** A request's body that ends in {@link BodyTooLarge} beyond a number of bytes. */
final class CountedStream extends ServletInputStream {

    private final ServletInputStream body;
    private final long limit;
    private long count;

    CountedStream(ServletInputStream body, long limit) {
        this.body = body;
        this.limit = limit;
    }

    @Override
    public int read() throws IOException {
        int next = body.read();
        count(next < 0 ? 0 : 1);
        return next;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int read = body.read(buffer, offset, length);
        count(Math.max(read, 0));
        return read;
    }

    @Override
    public boolean isFinished() {
        return body.isFinished();
    }

    @Override
    public boolean isReady() {
        return body.isReady();
    }

    @Override
    public void setReadListener(ReadListener listener) {
        body.setReadListener(listener);
    }

    private void count(int more) {
        count += more;
        if (count > limit) {
            throw new BodyTooLarge(limit);
        }
    }
}
