package studio.stancebook.account.passkey;

import org.jspecify.annotations.Nullable;
import org.springframework.security.web.webauthn.api.AuthenticatorAssertionResponse;
import org.springframework.security.web.webauthn.api.PublicKeyCredential;
import studio.stancebook.access.SignedIn;

/**
 * A passkey as a browser shows it: nothing is proven yet.
 *
 * @param claimed whose it would be; null for nobody's here
 */
public record ShownPasskey(
        PublicKeyCredential<AuthenticatorAssertionResponse> credential,
        @Nullable SignedIn claimed) {}
