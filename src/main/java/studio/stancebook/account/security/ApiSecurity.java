package studio.stancebook.account.security;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AuthenticationFilter;
import org.springframework.security.web.authentication.www.BasicAuthenticationFilter;
import studio.stancebook.edge.Admission;

/** The way in for programs: every request proves itself, nothing is kept between requests, no cookie is looked at. */
@Configuration(proxyBeanMethods = false)
class ApiSecurity {

    @Bean
    @Order(1)
    SecurityFilterChain api(HttpSecurity http, PasswordSignIn byPassword, TokenSignIn byToken, ApiRefusals refusals) {
        return http.securityMatcher("/api/**")
                // No cookie counts here, so a foreign page has nothing to forge a request with.
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .addFilterAt(
                        apiFilter(new ProviderManager(byPassword, byToken), refusals), BasicAuthenticationFilter.class)
                .authorizeHttpRequests(requests -> requests.requestMatchers(ReadOnly.WRITES)
                        .access(ReadOnly::decide)
                        .anyRequest()
                        .authenticated())
                .exceptionHandling(
                        handling -> handling.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
                .headers(SecurityHeaders::forApi)
                .build();
    }

    static AuthenticationFilter apiFilter(ProviderManager manager, ApiRefusals refusals) {
        AuthenticationFilter filter = new AuthenticationFilter(manager, new ApiCredentials());
        filter.setSuccessHandler((request, response, authentication) -> Admission.grant(request));
        filter.setFailureHandler(refusals::commence);
        return filter;
    }
}
