package studio.stancebook.account.passkey;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.core.NestedRuntimeException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.webauthn.api.AuthenticatorAssertionResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorAttestationResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorSelectionCriteria;
import org.springframework.security.web.webauthn.api.PublicKeyCredential;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialCreationOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRpEntity;
import org.springframework.security.web.webauthn.api.ResidentKeyRequirement;
import org.springframework.security.web.webauthn.api.UserVerificationRequirement;
import org.springframework.security.web.webauthn.jackson.WebauthnJacksonModule;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialCreationOptionsRequest;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialRequestOptionsRequest;
import org.springframework.security.web.webauthn.management.ImmutableRelyingPartyRegistrationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyAuthenticationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyPublicKey;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;
import org.springframework.security.web.webauthn.registration.HttpSessionPublicKeyCredentialCreationOptionsRepository;
import org.springframework.security.web.webauthn.registration.PublicKeyCredentialCreationOptionsRepository;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PasskeyOwners;
import studio.stancebook.account.internal.PasskeyService;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Refusal;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * The two ceremonies of Web Authentication Level 3, each in two steps: a browser is told what to ask its authenticator for,
 * and what comes back is verified. A passkey alone signs somebody in, so the authenticator must know its user (by a
 * finger, a face or a PIN), and must keep whose the passkey is.
 */
@Component
public class PasskeyCeremonies {

    /** Longest answer of a browser, in characters; one has some 1,000. */
    static final int LONGEST = 16_384;

    /** Longest id of a passkey, in bytes (Web Authentication Level 3, 4, "Credential ID"). */
    private static final int LONGEST_ID = 1_023;

    private static final String NAME = "Stancebook";

    private final RelyingParty party;
    private final Challenges challenges;
    private final PasskeyOwners owners;
    private final PasskeyService passkeyService;

    private final PublicKeyCredentialCreationOptionsRepository underWay =
            new HttpSessionPublicKeyCredentialCreationOptionsRepository();

    /** Made when first used: the port may be known only once the server runs, and most starts need none of it. */
    private final Supplier<Webauthn4JRelyingPartyOperations> operations = SingletonSupplier.of(this::makeOperations);

    private final Supplier<JsonMapper> json = SingletonSupplier.of(
            () -> JsonMapper.builder().addModule(new WebauthnJacksonModule()).build());

    PasskeyCeremonies(RelyingParty party, Challenges challenges, PasskeyOwners owners, PasskeyService passkeyService) {
        this.party = party;
        this.challenges = challenges;
        this.owners = owners;
        this.passkeyService = passkeyService;
    }

    /**
     * What a signed-in person's browser needs to make a passkey, as {@code PublicKeyCredentialCreationOptionsJSON}.
     *
     * @throws Impossible if the label will not do, or passkeys cannot be made for the address of this server
     */
    public String begin(
            SignedIn who, @Nullable String label, HttpServletRequest request, HttpServletResponse response) {
        refuseIfImpossible();
        passkeyService.checkedLabel(who, label);
        PublicKeyCredentialCreationOptions options = operations
                .get()
                .createPublicKeyCredentialCreationOptions(
                        new ImmutablePublicKeyCredentialCreationOptionsRequest(named(who.email())));
        underWay.save(request, response, options);
        return json.get().writeValueAsString(options);
    }

    /**
     * Keeps the passkey that a browser made for a signed-in person.
     *
     * @param credential {@code RegistrationResponseJSON}
     * @throws Impossible if it is not what this session's browser was asked for
     */
    public void finish(
            SignedIn who,
            @Nullable String label,
            @Nullable String credential,
            HttpServletRequest request,
            HttpServletResponse response) {
        String checked = passkeyService.checkedLabel(who, label);
        PublicKeyCredentialCreationOptions options = underWay.load(request);
        underWay.save(request, response, null);
        if (options == null || !who.email().equals(options.getUser().getName())) {
            throw Impossible.ofField("label", "No passkey is being made in this session. Begin again.");
        }
        try {
            verified(() -> operations
                    .get()
                    .registerCredential(new ImmutableRelyingPartyRegistrationRequest(
                            options, new RelyingPartyPublicKey(made(credential), checked))));
        } catch (PasskeyRefused unsound) {
            throw Impossible.ofField(
                    "label", "What the browser sent is not a passkey that was made here just now. Begin again.");
        }
    }

    private PublicKeyCredential<AuthenticatorAttestationResponse> made(@Nullable String sent) {
        PublicKeyCredential<AuthenticatorAttestationResponse> made =
                json.get().readValue(bounded(sent), new TypeReference<>() {});
        if (made.getRawId().getBytes().length > LONGEST_ID) {
            throw new PasskeyRefused("The id of the passkey is too long.");
        }
        return made;
    }

    /**
     * What a browser needs to show one of its passkeys, as {@code PublicKeyCredentialRequestOptionsJSON}: any of this
     * server, whoever's it is.
     *
     * @throws Impossible if passkeys cannot be used at the address of this server
     */
    public String ask(HttpServletRequest request, HttpServletResponse response) {
        refuseIfImpossible();
        PublicKeyCredentialRequestOptions options = operations
                .get()
                .createCredentialRequestOptions(new ImmutablePublicKeyCredentialRequestOptionsRequest(null));
        challenges.keep(options, request, response);
        return json.get().writeValueAsString(options);
    }

    /**
     * Reads what a browser shows.
     *
     * @param credential {@code AuthenticationResponseJSON}
     * @throws PasskeyRefused if it is not that
     */
    public ShownPasskey read(@Nullable String credential) {
        return verified(() -> {
            PublicKeyCredential<AuthenticatorAssertionResponse> shown =
                    json.get().readValue(bounded(credential), new TypeReference<>() {});
            return new ShownPasskey(shown, passkeyService.ownerOf(shown.getRawId()));
        });
    }

    /**
     * The e-mail address of whoever has shown a passkey, once it is proven to be what this browser was asked for.
     *
     * @throws PasskeyRefused if it is not
     */
    public String prove(ShownPasskey passkey, HttpServletRequest request, HttpServletResponse response) {
        PublicKeyCredentialRequestOptions asked = challenges
                .take(request, response)
                .orElseThrow(() -> new PasskeyRefused("This browser was not asked, or too long ago."));
        return verified(() -> operations
                .get()
                .authenticate(new RelyingPartyAuthenticationRequest(asked, passkey.credential()))
                .getName());
    }

    /** Whatever the verification objects to is the fault of what was sent; a store that fails is not. */
    private static <T> T verified(Supplier<T> step) {
        try {
            return step.get();
        } catch (PasskeyRefused | Refusal | NestedRuntimeException known) {
            throw known;
        } catch (RuntimeException unsound) {
            throw new PasskeyRefused("The passkey could not be verified.", unsound);
        }
    }

    private static String bounded(@Nullable String sent) {
        if (sent == null || sent.length() > LONGEST) {
            throw new PasskeyRefused("This is not the answer of a browser.");
        }
        return sent;
    }

    private void refuseIfImpossible() {
        if (!party.isPossible()) {
            throw new Impossible(
                    "Passkeys need an address that begins with https:// and has a name, or http://localhost; this server's is "
                            + party.origin() + ".");
        }
    }

    /** In the form in which the library asks whose passkey it is to be. */
    private static Authentication named(String email) {
        return UsernamePasswordAuthenticationToken.authenticated(email, null, List.of());
    }

    private Webauthn4JRelyingPartyOperations makeOperations() {
        Webauthn4JRelyingPartyOperations made = new Webauthn4JRelyingPartyOperations(
                owners,
                passkeyService,
                PublicKeyCredentialRpEntity.builder().id(party.id()).name(NAME).build(),
                Set.of(party.origin()));
        made.setCustomizeCreationOptions(options -> options.timeout(Challenges.LENGTH)
                .authenticatorSelection(AuthenticatorSelectionCriteria.builder()
                        .residentKey(ResidentKeyRequirement.REQUIRED)
                        .userVerification(UserVerificationRequirement.REQUIRED)
                        .build()));
        made.setCustomizeRequestOptions(
                options -> options.timeout(Challenges.LENGTH).userVerification(UserVerificationRequirement.REQUIRED));
        return made;
    }
}
