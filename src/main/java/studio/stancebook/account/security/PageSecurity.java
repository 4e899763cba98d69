package studio.stancebook.account.security;

import static org.springframework.security.authorization.AuthenticatedAuthorizationManager.authenticated;
import static org.springframework.security.authorization.AuthorizationManagers.allOf;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.FormLoginConfigurer;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.WebAttributes;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.DelegatingAuthenticationEntryPoint;
import org.springframework.security.web.authentication.ForwardAuthenticationFailureHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.logout.HeaderWriterLogoutHandler;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.util.matcher.RequestHeaderRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.SignInEvents;
import studio.stancebook.account.session.SignIns;

/** The way in for people: a form, a session, and everything closed that is not opened here. */
@Configuration(proxyBeanMethods = false)
@EnableMethodSecurity
class PageSecurity {

    static final String[] OPEN_TO_ALL = {
        "/sign-in",
        PasskeyForm.PATH,
        PasskeyForm.PATH + "/options",
        "/setup",
        "/theme",
        "/problems/*",
        "/error",
        "/assets/**",
        "/webjars/**",
        "/favicon.ico",
        "/actuator/health",
        "/actuator/health/liveness",
        "/actuator/health/readiness"
    };

    /** A part of a page, asked for by script: it cannot take somebody to the sign-in page by a redirect. */
    static final RequestMatcher PART_OF_PAGE = new RequestHeaderRequestMatcher("HX-Request", "true");

    /** Requests are timed as a whole; timing each of the filters would cost more than most of them do. */
    @Bean
    SecurityObservationSettings untimedFilters() {
        return SecurityObservationSettings.noObservations();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pages(
            HttpSecurity http,
            PasswordSignIn byPassword,
            PasskeySignIn byPasskey,
            PersonService personService,
            SignIns signIns,
            SignInEvents signInEvents,
            Clock clock) {
        return http.authenticationManager(new ProviderManager(byPassword))
                .csrf(csrf -> csrf.csrfTokenRepository(new FormTokens()))
                .authorizeHttpRequests(requests -> whoMaySeeWhat(requests, FreshProof.given(clock)))
                .formLogin(form -> signIn(form, signIns))
                .with(new PasskeyForm(byPasskey, workingDay(signIns, "passkey"), refused()))
                .logout(out -> out.logoutUrl("/sign-out")
                        .addLogoutHandler((request, response, who) -> leave(who, signInEvents))
                        .addLogoutHandler(new HeaderWriterLogoutHandler(SecurityHeaders.AT_SIGN_OUT))
                        .logoutSuccessUrl("/sign-in?left"))
                .requestCache(cache -> cache.requestCache(new SavedRequests(PART_OF_PAGE)))
                .exceptionHandling(handling -> handling.defaultAuthenticationEntryPointFor(
                                new SignInInstead("/sign-in"), PART_OF_PAGE)
                        .accessDeniedHandler(FreshProof.askFor(PageSecurity::deny)))
                .addFilterBefore(new AnonymousBodyFilter(toSignIn()), CsrfFilter.class)
                .addFilterBefore(new AccountStatusFilter(personService, signIns), AuthorizationFilter.class)
                .headers(SecurityHeaders::forPages)
                .build();
    }

    private static void whoMaySeeWhat(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests,
            AuthorizationManager<RequestAuthorizationContext> freshProof) {
        requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                .permitAll()
                .requestMatchers(OPEN_TO_ALL)
                .permitAll()
                .requestMatchers(MetricsSecurity.METRICS)
                .access(Permitted.to(Permission.READ_METRICS))
                .requestMatchers(FreshProof.FOR_PEOPLE)
                .access(allOf(Permitted.to(Permission.MANAGE_PEOPLE), freshProof))
                .requestMatchers(FreshProof.FOR_BACKUPS)
                .access(allOf(Permitted.to(Permission.TAKE_BACKUPS), freshProof))
                .requestMatchers(FreshProof.FOR_OWN_ACCOUNT)
                .access(allOf(authenticated(), freshProof))
                .requestMatchers(ReadOnly.WRITES)
                .access(ReadOnly::decide)
                .anyRequest()
                .authenticated();
    }

    private static void signIn(FormLoginConfigurer<HttpSecurity> form, SignIns signIns) {
        form.loginPage("/sign-in")
                .usernameParameter("email")
                .passwordParameter("password")
                .successHandler(workingDay(signIns, "password"))
                .failureHandler(refused());
    }

    private static SignInSuccessHandler workingDay(SignIns signIns, String by) {
        return new SignInSuccessHandler(
                new SavedRequests(PART_OF_PAGE), (who, request) -> signIns.begin(who, by, request));
    }

    private static AuthenticationFailureHandler refused() {
        return new ForwardAuthenticationFailureHandler("/sign-in/refused");
    }

    /** Where somebody is sent who must sign in first. */
    private static AuthenticationEntryPoint toSignIn() {
        return DelegatingAuthenticationEntryPoint.builder()
                .addEntryPointFor(new SignInInstead("/sign-in"), PART_OF_PAGE)
                .defaultEntryPoint(new LoginUrlAuthenticationEntryPoint("/sign-in"))
                .build();
    }

    private static void leave(@Nullable Authentication authentication, SignInEvents signInEvents) {
        if (authentication != null && authentication.getPrincipal() instanceof SignedIn who) {
            signInEvents.ended(who);
        }
    }

    /** Leaves the reason for the error page, which has other words for a form without its token. */
    private static void deny(HttpServletRequest request, HttpServletResponse response, AccessDeniedException reason)
            throws IOException {
        request.setAttribute(WebAttributes.ACCESS_DENIED_403, reason);
        response.sendError(HttpServletResponse.SC_FORBIDDEN);
    }
}
