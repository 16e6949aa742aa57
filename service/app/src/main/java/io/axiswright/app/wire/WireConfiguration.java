package io.axiswright.app.wire;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.converter.HttpMessageConverters;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Puts the wire format into Spring MVC. */
@Configuration(proxyBeanMethods = false)
class WireConfiguration implements WebMvcConfigurer {

    @Override
    public void configureMessageConverters(HttpMessageConverters.ServerBuilder builder) {
        builder.addCustomConverter(new RecordBodyConverter());
    }
}
