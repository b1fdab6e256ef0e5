package org.nestyear.app.web;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.http.converter.autoconfigure.HttpMessageConvertersAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.ServletWebSecurityAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.HttpEncodingAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.MultipartAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorMvcAutoConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

/**
 * What the server is put together from. The season desk, the small sums and the launch token are handed in at the start. The parts of
 * Spring Boot are named one by one: looking through all it offers would take a quarter of the start.
 */
@SpringBootConfiguration(proxyBeanMethods = false)
@ImportAutoConfiguration({
    ConfigurationPropertiesAutoConfiguration.class,
    TomcatServletWebServerAutoConfiguration.class,
    HttpEncodingAutoConfiguration.class,
    MultipartAutoConfiguration.class,
    HttpMessageConvertersAutoConfiguration.class,
    DispatcherServletAutoConfiguration.class,
    WebMvcAutoConfiguration.class,
    ErrorMvcAutoConfiguration.class,
    ServletWebSecurityAutoConfiguration.class,
    SecurityFilterAutoConfiguration.class
})
@Import({
    SecurityConfiguration.class,
    HealthController.class,
    PlanController.class,
    SeasonsController.class,
    SumsController.class,
    SourcesController.class,
    ShareController.class,
    RecordsController.class,
    VisitController.class,
    TallyController.class,
    LoggerController.class,
    SheetController.class,
    SheetFileController.class,
    EntryController.class,
    TroubleController.class,
    TroubleAdvice.class
})
class WebApplication {
    @Bean
    Pages pages() {
        return new Pages();
    }
}
