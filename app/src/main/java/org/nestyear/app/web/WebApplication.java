package org.nestyear.app.web;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

/** What the server is put together from. The season desk and the launch token are handed in at the start. */
@SpringBootConfiguration(proxyBeanMethods = false)
@EnableAutoConfiguration(exclude = UserDetailsServiceAutoConfiguration.class)
@Import({
    SecurityConfiguration.class,
    HealthController.class,
    PlanController.class,
    SeasonsController.class,
    TroubleController.class,
    TroubleAdvice.class
})
class WebApplication {
    @Bean
    Pages pages() {
        return new Pages();
    }
}
