package io.axiswright.app.wire;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.converter.HttpMessageConverters;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Puts the wire format into Spring MVC, and takes out what would read and write our records by other rules. */
@Configuration(proxyBeanMethods = false)
class WireConfiguration implements WebMvcConfigurer {

    @Override
    public void configureMessageConverters(HttpMessageConverters.ServerBuilder builder) {
        builder.addCustomConverter(new RecordBodyConverter());
        builder.configureMessageConvertersList(converters -> converters.removeIf(WireConfiguration::readsYaml));
    }

    /** Spring takes YAML wherever its library is present, as it is for the API document; it knows no ranges and no missing members. */
    private static boolean readsYaml(HttpMessageConverter<?> converter) {
        return converter.getSupportedMediaTypes().stream().anyMatch(MediaType.APPLICATION_YAML::equalsTypeAndSubtype);
    }
}
