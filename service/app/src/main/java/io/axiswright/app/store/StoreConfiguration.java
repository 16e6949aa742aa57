package io.axiswright.app.store;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The clock and the keys. */
@Configuration(proxyBeanMethods = false)
class StoreConfiguration {

    /** Ticks in microseconds, as the database keeps times: what we answer now is what we answer later. */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.of(1, ChronoUnit.MICROS));
    }

    @Bean
    Identifiers identifiers(Clock clock) {
        return new Identifiers(clock, new SecureRandom());
    }
}
