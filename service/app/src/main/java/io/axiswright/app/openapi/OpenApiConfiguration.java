package io.axiswright.app.openapi;

import io.axiswright.engine.study.EngineVersion;
import io.swagger.v3.oas.models.OpenAPI;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The head of the document. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    @Bean
    OpenAPI document() {
        OpenAPI head = WrittenText.head();
        head.getInfo().setVersion(EngineVersion.CURRENT);
        return head;
    }
}
