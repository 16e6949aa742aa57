package io.axiswright.app.sizing;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.util.function.BooleanSupplier;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.springframework.boot.tomcat.ConfigurableTomcatWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/**
 * Whether the caller of the request the present thread works on has closed the connection. A servlet is not told, and Tomcat itself
 * would only notice when it writes the answer; but its connection can be read without waiting, and a closed one reads as its end.
 * HTTP/1.1 only. A caller who closes no more than his sending side counts as gone, too.
 */
@Component
class CallerWatch implements BooleanSupplier, WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> {

    private static final String CONNECTION = CallerWatch.class.getName();

    @Override
    public void customize(ConfigurableTomcatWebServerFactory factory) {
        factory.addContextCustomizers(context -> context.getPipeline().addValve(new ConnectionValve()));
    }

    @Override
    public boolean getAsBoolean() {
        RequestAttributes attributes = RequestContextHolder.getRequestAttributes();
        return attributes != null
                && attributes.getAttribute(CONNECTION, RequestAttributes.SCOPE_REQUEST)
                        instanceof org.apache.coyote.Request connection
                && closed(connection);
    }

    /** A read that fails is told as one byte to come, yet none is in the buffer; bytes of a next request are in both. */
    private static boolean closed(org.apache.coyote.Request connection) {
        return available(connection, true) == 1 && available(connection, false) == 0;
    }

    private static int available(org.apache.coyote.Request connection, boolean read) {
        connection.action(ActionCode.AVAILABLE, read);
        return connection.getAvailable();
    }

    private static final class ConnectionValve extends ValveBase {

        ConnectionValve() {
            super(true);
        }

        @Override
        public void invoke(Request request, Response response) throws IOException, ServletException {
            request.setAttribute(CONNECTION, request.getCoyoteRequest());
            getNext().invoke(request, response);
        }
    }
}
