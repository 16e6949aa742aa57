package io.axiswright.probe;

import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** No database, no engine: only what this module says to HTTP. */
@Configuration(proxyBeanMethods = false)
@EnableAutoConfiguration(
        excludeName = {
            "org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration",
            "org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration",
            "org.springframework.boot.data.jpa.autoconfigure.DataJpaRepositoriesAutoConfiguration",
            "org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration"
        })
@ComponentScan({"io.axiswright.app.wire", "io.axiswright.app.problem", "io.axiswright.app.openapi"})
@Import(ProbeController.class)
public class ProbeApplication {}
