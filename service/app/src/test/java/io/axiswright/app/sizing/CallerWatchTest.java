package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Requests over sockets of our own: one whose caller hangs up while it is worked on, and others whose callers stay. */
@SpringBootTest(
        classes = CallerWatchTest.Application.class,
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = "spring.threads.virtual.enabled=true")
class CallerWatchTest {

    private static final String HEAD =
            "POST /%s HTTP/1.1\r\nHost: here\r\nContent-Type: text/plain\r\nContent-Length: 4\r\n\r\nbody";

    @LocalServerPort
    private int port;

    @Autowired
    private Endpoints endpoints;

    @Test
    void aCallerWhoHangsUpIsMissed() throws IOException, InterruptedException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("until-gone"));
            endpoints.begun.await();
        }
        // Without noticing, the endpoint would wait for ever and so would this.
        endpoints.noticed.await();
    }

    @Test
    void aCallerWhoStaysIsNotMissed() throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("glances"));
            assertThat(answer(socket)).contains("gone 0 of 20");
        }
    }

    /** The bytes of the next request that are read on the way are answered afterwards. */
    @Test
    void theNextRequestOnTheConnectionIsNotLost() throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("glances") + HEAD.formatted("glances"));
            assertThat(answer(socket)).contains("gone 0 of 20");
            assertThat(answer(socket)).contains("gone 0 of 20");
        }
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
    }

    /** Reads to the end of one answer, which is what the endpoint says. */
    private static String answer(Socket socket) throws IOException {
        var text = new StringBuilder();
        while (!text.toString().endsWith("of 20")) {
            int next = socket.getInputStream().read();
            assertThat(next).as("after %s", text).isNotNegative();
            text.append((char) next);
        }
        return text.toString();
    }

    @Configuration(proxyBeanMethods = false)
    @EnableAutoConfiguration(
            excludeName = {
                "org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration",
                "org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration",
                "org.springframework.boot.data.jpa.autoconfigure.DataJpaRepositoriesAutoConfiguration",
                "org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration"
            })
    @Import({CallerWatch.class, Endpoints.class})
    static class Application {}

    @RestController
    static class Endpoints {

        private final CountDownLatch begun = new CountDownLatch(1);
        private final CountDownLatch noticed = new CountDownLatch(1);
        private final CallerWatch watch;

        Endpoints(CallerWatch watch) {
            this.watch = watch;
        }

        @PostMapping("/until-gone")
        void untilGone(@RequestBody String body) {
            begun.countDown();
            while (!watch.getAsBoolean()) {
                LockSupport.parkNanos(5_000_000);
            }
            noticed.countDown();
        }

        @PostMapping("/glances")
        String glances(@RequestBody String body) {
            int gone = 0;
            for (int k = 0; k < 20; k++) {
                gone += watch.getAsBoolean() ? 1 : 0;
                LockSupport.parkNanos(2_000_000);
            }
            return "gone " + gone + " of 20";
        }
    }
}
