package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.servers.Server;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The head of the document. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    private static final String DESCRIPTION = """
            Sizes complete multi-axis servo systems: axis duty, control network, control power, AC supply, braking energy, \
            conductors, shaft fastening and bill of materials, each number with the rule it comes from.

            Quantities are a value with a unit, `{"value": 12.5, "unit": "N.m"}`, metric or US customary as you like; answers \
            are in SI. Documents are read strictly: an unknown member is a fault, not a remark. A document without meaning is \
            answered with 422 and every fault with its place; a system that can be described but not built is answered with \
            200 and findings that say what would fix it. Ignore members of answers that you do not know: more may come.

            The results advise; they do not replace the judgement of a qualified person, the local code or the authority \
            having jurisdiction.""";

    @Bean
    OpenAPI document(@Value("${axiswright.version:0.1.0}") String version) {
        return new OpenAPI()
                .info(new Info()
                        .title("Axiswright")
                        .version(version)
                        .description(DESCRIPTION)
                        .license(new License().name("Apache-2.0").identifier("Apache-2.0")))
                .servers(List.of(new Server().url("/").description("this service")));
    }
}
