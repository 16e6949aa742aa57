package io.axiswright.app.demo;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** For the README's run command: sends the demo request to the service that has just started and tells what came back. */
@Component
@Order(2)
@ConditionalOnProperty("axiswright.demo.first-request")
class FirstRequest implements ApplicationRunner {

    private final WebServerApplicationContext context;
    private final JsonMapper mapper;

    FirstRequest(WebServerApplicationContext context, JsonMapper mapper) {
        this.context = context;
        this.mapper = mapper;
    }

    @Override
    @SuppressWarnings("SystemOut") // the run command's answer belongs on the terminal, not in a log
    public void run(ApplicationArguments arguments) throws IOException, InterruptedException {
        int port = java.util.Objects.requireNonNull(context.getWebServer()).getPort();
        String base = "http://localhost:" + port;
        try (HttpClient client = HttpClient.newHttpClient()) {
            String request = send(client, HttpRequest.newBuilder(URI.create(base + "/v1/demo/request")));
            String answer = send(
                    client,
                    HttpRequest.newBuilder(URI.create(base + "/v1/sizing/system"))
                            .header("Content-Type", "application/json")
                            .POST(HttpRequest.BodyPublishers.ofString(request)));
            System.out.println(summary(mapper.readTree(answer), base));
        }
    }

    private static String send(HttpClient client, HttpRequest.Builder request)
            throws IOException, InterruptedException {
        HttpResponse<String> response = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200) {
            throw new IOException(response.uri() + " answered " + response.statusCode() + ": " + response.body());
        }
        return response.body();
    }

    private static String summary(JsonNode system, String base) {
        return """

                The demo design (invented), answered by %s/v1/sizing/system:
                  drive units    %s
                  gateways       %d on the network, cost proven within %s of the best
                  24 V           least margin: %s
                  braking        %s
                  circuits       %d branch circuits and a feeder
                  bill           %d lines to buy, %s %s; %s
                  findings       %s

                Browse the API at %s/docs. Stop the service with Ctrl-C.
                """.formatted(
                        base,
                        each(system.at("/duty/axes"), "driveUnit"),
                        system.at("/topology/gateways").size(),
                        percent(system.at("/topology/gap/value").asDouble()),
                        margin(system.at("/controlPower/worst")),
                        each(system.at("/braking/groups"), "verdict"),
                        system.at("/supply/circuits").size(),
                        system.at("/billOfMaterials/required/lines").size(),
                        system.at("/billOfMaterials/required/total/amount").asString(),
                        system.at("/billOfMaterials/required/total/currency").asString(),
                        system.at("/buildable").asBoolean() ? "buildable" : "not buildable as it stands",
                        each(system.at("/findings"), "severity"),
                        base);
    }

    /** "3 × a, 1 × b" over a member of the elements. */
    private static String each(JsonNode list, String member) {
        return StreamSupport.stream(list.spliterator(), false)
                .collect(Collectors.groupingBy(
                        n -> n.path(member).asString("none"), java.util.TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(e -> e.getValue() + " × " + e.getKey())
                .collect(Collectors.joining(", "));
    }

    private static String percent(double share) {
        return "%.2f %%".formatted(share * 100);
    }

    /** "1.5 V more than lift needs". */
    private static String margin(JsonNode worst) {
        return worst.isMissingNode()
                ? "not known"
                : "%.1f V more than %s needs"
                        .formatted(
                                worst.at("/margin/value").asDouble(),
                                worst.path("subject").asString());
    }
}
