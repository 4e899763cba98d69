package studio.stancebook.account.security;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/** Recognises the program that collects metrics, which is nobody of the studio and may see nothing else. */
final class MetricsSignIn implements AuthenticationProvider {

    static final String AUTHORITY = "METRICS";

    private final MetricsSettings settings;

    MetricsSignIn(MetricsSettings settings) {
        this.settings = settings;
    }

    /** Empty-handed for any other token, which may be that of a person. */
    @Override
    public @Nullable Authentication authenticate(Authentication claim) {
        String shown = Objects.requireNonNull(((TokenAuthentication) claim).getCredentials());
        return settings.token() != null && same(settings.token(), shown)
                ? UsernamePasswordAuthenticationToken.authenticated(
                        "metrics", null, List.of(new SimpleGrantedAuthority(AUTHORITY)))
                : null;
    }

    /** Takes the same time wherever the first difference is. */
    private static boolean same(String wanted, String shown) {
        return MessageDigest.isEqual(wanted.getBytes(StandardCharsets.UTF_8), shown.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public boolean supports(Class<?> kind) {
        return TokenAuthentication.class.isAssignableFrom(kind);
    }
}
