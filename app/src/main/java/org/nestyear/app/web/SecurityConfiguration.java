package org.nestyear.app.web;

import java.util.Set;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.NullRequestCache;

/** The guards: names this computer answers to, the launch token, forms that came from our own pages, no foreign content. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class SecurityConfiguration {
    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]", "::1");
    private static final String CONTENT_POLICY =
            "default-src 'self'; img-src 'self' data:; script-src 'self'; object-src 'none'; base-uri 'none';"
                    + " form-action 'self'; frame-ancestors 'none'";

    // A foreign page could point its own name at 127.0.0.1 and so read ours; a request must name this computer.
    @Bean
    HttpFirewall firewall() {
        StrictHttpFirewall firewall = new StrictHttpFirewall();
        firewall.setAllowedHostnames(OWN_NAMES::contains);
        return firewall;
    }

    @Bean
    SecurityFilterChain chain(HttpSecurity http, LaunchToken token, Pages pages) throws Exception {
        return http.authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .addFilterBefore(new LaunchTokenFilter(token, pages), AuthorizationFilter.class)
                .headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER)))
                .requestCache(cache -> cache.requestCache(new NullRequestCache()))
                .anonymous(anonymous -> anonymous.disable())
                .logout(logout -> logout.disable())
                .build();
    }
}
