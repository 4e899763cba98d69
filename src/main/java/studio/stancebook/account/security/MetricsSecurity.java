package studio.stancebook.account.security;

import static org.springframework.security.authorization.AuthorityAuthorizationManager.hasAuthority;
import static org.springframework.security.authorization.AuthorizationManagers.anyOf;
import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.www.BasicAuthenticationFilter;
import org.springframework.security.web.util.matcher.AndRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import studio.stancebook.access.Permission;

/** The way to the metrics for programs: a token of a lead, or the one that is set for this alone. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(MetricsSettings.class)
class MetricsSecurity {

    static final String METRICS = "/actuator/prometheus";

    /** Without the header it is a person at a browser, who comes the way of all pages. */
    private static final RequestMatcher BY_PROGRAM = new AndRequestMatcher(
            pathPattern(METRICS), request -> request.getHeader(HttpHeaders.AUTHORIZATION) != null);

    @Bean
    @Order(0)
    SecurityFilterChain metrics(
            HttpSecurity http, MetricsSettings settings, TokenSignIn byToken, ApiRefusals refusals) {
        ProviderManager manager = new ProviderManager(new MetricsSignIn(settings), byToken);
        return http.securityMatcher(BY_PROGRAM)
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .addFilterAt(ApiSecurity.apiFilter(manager, refusals), BasicAuthenticationFilter.class)
                .authorizeHttpRequests(requests -> requests.anyRequest()
                        .access(anyOf(Permitted.to(Permission.READ_METRICS), hasAuthority(MetricsSignIn.AUTHORITY))))
                .exceptionHandling(
                        handling -> handling.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
                .headers(SecurityHeaders::forApi)
                .build();
    }
}
