package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
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
    void aCallerWhoClosesIsMissed() throws IOException, InterruptedException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("until-gone"));
            endpoints.begun.acquire();
        }
        // Without noticing, the endpoint would wait for ever and so would this.
        endpoints.noticed.acquire();
    }

    /** Without lingering the connection is reset instead of ended. */
    @Test
    void aCallerWhoResetsIsMissed() throws IOException, InterruptedException {
        try (Socket socket = new Socket("localhost", port)) {
            socket.setSoLinger(true, 0);
            send(socket, HEAD.formatted("until-gone"));
            endpoints.begun.acquire();
        }
        endpoints.noticed.acquire();
    }

    /** The same search stops as soon as he who listened on closes for good. */
    @Test
    void aCallerWhoFirstListensOnAndThenClosesIsMissed() throws IOException, InterruptedException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("until-gone"));
            socket.shutdownOutput();
            endpoints.begun.acquire();
            assertThat(line(socket)).isEqualTo("HTTP/1.1 102 ");
        }
        endpoints.noticed.acquire();
    }

    @Test
    void aCallerWhoStaysIsNotMissed() throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("glances"));
            assertThat(answer(socket)).startsWith("HTTP/1.1 200 ").endsWith("gone 0 of 20");
        }
    }

    /** Bytes of the next request that come before, while and after the first is worked on are answered in their order. */
    @Test
    void pipelinedRequestsAreAnsweredAsIfSentOneByOne() throws IOException, InterruptedException {
        try (Socket socket = new Socket("localhost", port)) {
            String second = HEAD.formatted("echo").replace("body", "2nd.");
            String third = HEAD.formatted("echo").replace("body", "3rd.");
            send(socket, HEAD.formatted("glances") + second.substring(0, 30));
            endpoints.glancing.acquire();
            send(socket, second.substring(30) + third.substring(0, 80));
            String first = answer(socket);
            send(socket, third.substring(80));

            assertThat(first).startsWith("HTTP/1.1 200 ").endsWith("gone 0 of 20");
            assertThat(answer(socket)).startsWith("HTTP/1.1 200 ").endsWith("\r\n\r\n2nd. of 20");
            assertThat(answer(socket)).startsWith("HTTP/1.1 200 ").endsWith("\r\n\r\n3rd. of 20");
        }
    }

    /** Closing the sending side is no farewell: interim answers may come before the answer, and must be borne. */
    @Test
    void aCallerWhoClosesHisSendingSideGetsHisAnswers() throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("glances") + HEAD.formatted("echo"));
            socket.shutdownOutput();
            assertThat(withoutInterim(answer(socket)))
                    .startsWith("HTTP/1.1 200 ")
                    .endsWith("gone 0 of 20");
            assertThat(withoutInterim(answer(socket)))
                    .startsWith("HTTP/1.1 200 ")
                    .endsWith("\r\n\r\nbody of 20");
            assertThat(socket.getInputStream().read()).isEqualTo(-1);
        }
    }

    /** HTTP/1.0 knows no interim answers, so its callers get none and count as staying. */
    @Test
    void aCallerOfTheOldProtocolGetsNoInterimAnswer() throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            send(socket, HEAD.formatted("glances").replace("HTTP/1.1", "HTTP/1.0"));
            socket.shutdownOutput();
            assertThat(answer(socket)).startsWith("HTTP/1.1 200 ").endsWith("gone 0 of 20");
        }
    }

    private static String withoutInterim(String answer) {
        return answer.replace("HTTP/1.1 102 \r\n\r\n", "");
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
    }

    private static String line(Socket socket) throws IOException {
        return until(socket, "\r\n").strip() + " ";
    }

    /** Reads to the end of one answer, which is what the endpoint says. */
    private static String answer(Socket socket) throws IOException {
        return until(socket, " of 20");
    }

    private static String until(Socket socket, String end) throws IOException {
        var text = new StringBuilder();
        while (!text.toString().endsWith(end)) {
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

        private final Semaphore begun = new Semaphore(0);
        private final Semaphore noticed = new Semaphore(0);
        private final Semaphore glancing = new Semaphore(0);
        private final CallerWatch watch;

        Endpoints(CallerWatch watch) {
            this.watch = watch;
        }

        @PostMapping("/until-gone")
        void untilGone(@RequestBody String body) {
            begun.release();
            while (!watch.getAsBoolean()) {
                LockSupport.parkNanos(5_000_000);
            }
            noticed.release();
        }

        @PostMapping("/glances")
        String glances(@RequestBody String body) {
            glancing.release();
            int gone = 0;
            for (int k = 0; k < 20; k++) {
                gone += watch.getAsBoolean() ? 1 : 0;
                LockSupport.parkNanos(2_000_000);
            }
            return "gone " + gone + " of 20";
        }

        @PostMapping("/echo")
        String echo(@RequestBody String body) {
            return body + " of 20";
        }
    }
}
