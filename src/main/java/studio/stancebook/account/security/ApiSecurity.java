package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AuthenticationFilter;
import org.springframework.security.web.authentication.www.BasicAuthenticationFilter;
import org.springframework.security.web.util.matcher.AndRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import studio.stancebook.edge.Admission;

/** The way in for programs: every request proves itself, nothing is kept between requests, no cookie is looked at. */
@Configuration(proxyBeanMethods = false)
class ApiSecurity {

    /** Without the header it is a person at a browser, who comes the way of all pages. */
    private static final RequestMatcher DESCRIPTION_FOR_PROGRAM = new AndRequestMatcher(
            new OrRequestMatcher(pathPattern("/v3/api-docs/**"), pathPattern("/v3/api-docs.yaml")),
            request -> request.getHeader(HttpHeaders.AUTHORIZATION) != null);

    private static final RequestMatcher BY_PROGRAM =
            new OrRequestMatcher(pathPattern("/api/**"), DESCRIPTION_FOR_PROGRAM);

    @Bean
    @Order(1)
    SecurityFilterChain api(HttpSecurity http, PasswordSignIn byPassword, TokenSignIn byToken, ApiRefusals refusals) {
        return http.securityMatcher(BY_PROGRAM)
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
