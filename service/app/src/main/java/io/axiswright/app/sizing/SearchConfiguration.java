package io.axiswright.app.sizing;

import io.axiswright.engine.topology.SearchGate;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the searches of all requests share. */
@Configuration(proxyBeanMethods = false)
class SearchConfiguration {

    /** Each search keeps one core busy: more at once would only be slower, and take more memory outside the heap. */
    @Bean
    SearchGate searchGate(CallerWatch watch) {
        return new SearchGate(Runtime.getRuntime().availableProcessors(), watch);
    }
}
