package io.axiswright.app.sizing;

import java.util.function.BooleanSupplier;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;

/**
 * Whether the caller of the request the present thread works on has closed the connection. HTTP/1.1 only; behind a proxy it is the
 * proxy's connection that counts.
 */
@Component
class CallerWatch implements BooleanSupplier, WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        factory.setProtocol(WatchedHttp.class.getName());
    }

    @Override
    public boolean getAsBoolean() {
        return WatchedHttp.callerGone();
    }
}
