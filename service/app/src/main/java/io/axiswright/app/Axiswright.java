package io.axiswright.app;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class Axiswright {

    /** Entry point; arguments are Spring Boot properties. */
    public static void main(String[] args) {
        SpringApplication.run(Axiswright.class, args);
    }
}
