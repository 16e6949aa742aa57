package io.axiswright.app.openapi;

import io.swagger.v3.oas.models.OpenAPI;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The head of the document. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    @Bean
    OpenAPI document(@Value("${axiswright.version:0.1.0}") String version) {
        OpenAPI head = WrittenText.head();
        head.getInfo().setVersion(version);
        return head;
    }
}
