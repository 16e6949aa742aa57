package io.axiswright.app.sizing;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.coyote.Adapter;
import org.apache.coyote.Processor;
import org.apache.coyote.http11.AbstractHttp11Protocol;
import org.apache.coyote.http11.Http11NioProtocol;
import org.apache.coyote.http11.Http11Processor;
import org.apache.tomcat.util.net.AbstractEndpoint.Handler.SocketState;
import org.apache.tomcat.util.net.SocketWrapperBase;

/**
 * Tomcat's HTTP/1.1, able to tell a request's thread that its caller has closed the connection. Looking takes no byte away: what has
 * come meanwhile stays in the connection's buffer for the next request.
 *
 * <p>Of a connection that reads as ended TCP does not say whether the caller has closed it or only his sending side, which HTTP allows.
 * So an interim answer is sent, as every client of HTTP/1.1 has to bear (RFC 9110, 15.2): a closed connection refuses it, and the
 * next one fails.
 */
public final class WatchedHttp extends Http11NioProtocol {

    private static final ScopedValue<Watched> CURRENT = ScopedValue.newInstance();

    /** Whether the caller of the present thread's request has closed the connection; asked on the request's own thread. */
    static boolean callerGone() {
        return CURRENT.isBound() && CURRENT.get().gone();
    }

    @Override
    protected Processor createProcessor() {
        return new Watched(this, adapter);
    }

    private static final class Watched extends Http11Processor {

        private static final byte[] PROCESSING = "HTTP/1.1 102 \r\n\r\n".getBytes(StandardCharsets.US_ASCII);

        private int ends;

        Watched(AbstractHttp11Protocol<?> protocol, Adapter adapter) {
            super(protocol, adapter);
        }

        @Override
        public SocketState service(SocketWrapperBase<?> connection) throws IOException {
            ends = 0;
            return ScopedValue.where(CURRENT, this).call(() -> super.service(connection));
        }

        private boolean gone() {
            try {
                getSocketWrapper().isReadyForRead();
                return false;
            } catch (EOFException e) {
                return refused();
            } catch (IOException e) {
                return true;
            }
        }

        /** Asks at the 1st, 2nd, 4th, 8th … look at an ended connection, so that one who only listens is not told too often. */
        private boolean refused() {
            boolean turn = Integer.bitCount(++ends) == 1;
            if (!turn || response.isCommitted() || !request.protocol().equals("HTTP/1.1")) {
                return false;
            }
            try {
                getSocketWrapper().write(true, PROCESSING, 0, PROCESSING.length);
                getSocketWrapper().flush(true);
                return false;
            } catch (IOException e) {
                return true;
            }
        }
    }
}
