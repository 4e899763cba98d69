package studio.stancebook.account.security;

import static org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher.pathPattern;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.HeaderWriter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter.Directive;
import org.springframework.security.web.header.writers.ContentSecurityPolicyHeaderWriter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.DelegatingRequestMatcherHeaderWriter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.util.matcher.NegatedRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** What browsers are told not to do with our answers. */
public final class SecurityHeaders {

    /** Everything from this server, nothing inline, no framing. */
    static final String PAGES =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; "
                    + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** Data is not to be shown as a page at all. */
    static final String API = "default-src 'none'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    /** The page that describes the API is a library's, which styles itself inline and draws its icons from data. */
    static final String API_DESCRIPTION = "default-src 'none'; style-src 'self' 'unsafe-inline'; script-src 'self'; "
            + "img-src 'self' data:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; "
            + "frame-ancestors 'none'";

    /**
     * What a browser forgets once somebody has signed out, where it came over TLS: pages seen and whatever scripts kept. Cookies
     * stay: that of the session is withdrawn by itself, and the others name nobody, such as the choice of colours.
     */
    public static final HeaderWriter AT_SIGN_OUT = new ClearSiteDataHeaderWriter(Directive.CACHE, Directive.STORAGE);

    private static final RequestMatcher DESCRIBES_API =
            new OrRequestMatcher(pathPattern("/swagger-ui/**"), pathPattern("/swagger-ui.html"));

    private SecurityHeaders() {}

    static void forPages(HeadersConfigurer<HttpSecurity> headers) {
        common(headers);
        headers.addHeaderWriter(policy(new NegatedRequestMatcher(DESCRIBES_API), PAGES));
        headers.addHeaderWriter(policy(DESCRIBES_API, API_DESCRIPTION));
    }

    static void forApi(HeadersConfigurer<HttpSecurity> headers) {
        common(headers);
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(API));
    }

    private static void common(HeadersConfigurer<HttpSecurity> headers) {
        headers.referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN));
        headers.permissionsPolicyHeader(
                policy -> policy.policy("camera=(), geolocation=(), microphone=(), payment=(), usb=()"));
        headers.crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN));
        headers.crossOriginResourcePolicy(policy -> policy.policy(CrossOriginResourcePolicy.SAME_ORIGIN));
    }

    private static HeaderWriter policy(RequestMatcher where, String directives) {
        return new DelegatingRequestMatcherHeaderWriter(where, new ContentSecurityPolicyHeaderWriter(directives));
    }
}
