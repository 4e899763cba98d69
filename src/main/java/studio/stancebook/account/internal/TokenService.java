package studio.stancebook.account.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;
import studio.stancebook.problem.NotFound;

/** Issues, recognises and revokes tokens. */
@Component
@Transactional
public class TokenService {

    /** Our choice: a quarter of a year unless something else is asked for, and at most a year. */
    public static final int USUAL_DAYS = 90;

    public static final int MAX_DAYS = 366;

    private static final int MAX_NAME = 100;

    private final AccessTokens tokens;
    private final People people;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    TokenService(AccessTokens tokens, People people, Clock clock, ApplicationEventPublisher events) {
        this.tokens = tokens;
        this.people = people;
        this.clock = clock;
        this.events = events;
    }

    /**
     * Issues a token, whose secret is in the answer and nowhere else.
     *
     * @throws Impossible naming every field that cannot be accepted
     * @throws Forbidden if the owner was deactivated, or still has a password that somebody else set
     */
    public IssuedToken issue(SignedIn owner, NewToken typed) {
        ErrorList objections = new ErrorList();
        String name = checkedName(typed.name(), objections);
        TokenScope scope = checkedScope(typed.scope(), objections);
        Duration life = checkedLife(typed.expiresInDays(), objections);
        if (!objections.isEmpty()) {
            throw Impossible.of(objections);
        }
        Person person = people.lock(owner.personId()).orElseThrow(() -> new NotFound("person", owner.personId()));
        if (!person.active()) {
            throw new Forbidden("You may no longer sign in.");
        }
        if (person.passwordChangeDue()) {
            throw new Forbidden(
                    "Somebody else set your password. Sign in to the pages and choose your own first; then make a"
                            + " token.");
        }
        String secret = Secret.token();
        Instant now = clock.instant();
        Instant end = now.plus(life);
        AccessToken token = tokens.save(new AccessToken(person, name, scope, hash(secret), now, end));
        FieldValues made = FieldValues.of("name", name)
                .and("owner", person.displayName())
                .and("scope", scope.key())
                .and("expires", end);
        events.publishEvent(ActivityEvent.of("made", "token", token.id(), name, FieldValues.none(), made));
        return new IssuedToken(token.entry(), secret);
    }

    @Transactional(readOnly = true)
    public Page<TokenEntry> list(SignedIn owner, Pageable page) {
        return tokens.ofPerson(owner.personId(), page).map(AccessToken::entry);
    }

    @Transactional(readOnly = true)
    public List<TokenEntry> list(SignedIn owner) {
        return tokens.ofPerson(owner.personId()).stream()
                .map(AccessToken::entry)
                .toList();
    }

    /** @throws NotFound if the owner has no such token, even if somebody else has */
    public void revoke(SignedIn owner, long id) {
        String name = list(owner).stream()
                .filter(token -> token.id() == id)
                .map(TokenEntry::name)
                .findFirst()
                .orElseThrow(() -> new NotFound("token", id));
        if (tokens.revoke(id, owner.personId()) == 0) {
            throw new NotFound("token", id);
        }
        FieldValues gone = FieldValues.of("name", name).and("owner", owner.name());
        events.publishEvent(ActivityEvent.of("revoked", "token", id, name, gone, FieldValues.none()));
    }

    /**
     * What a secret is as of now, noted as used at most once a minute unless it has expired; empty if it is unknown or its
     * owner may not sign in.
     */
    public Optional<RecognisedToken> recognise(String secret) {
        Instant now = clock.instant();
        Optional<AccessToken> known =
                tokens.findByHash(hash(secret)).filter(token -> token.person().active());
        Optional<RecognisedToken> recognised = known.map(token -> token.recognised(now));
        known.filter(token -> !token.expired(now) && token.useIsWorthNoting(now))
                .ifPresent(token -> tokens.noteUse(token.id(), now));
        return recognised;
    }

    private static String checkedName(@Nullable String typed, ErrorList objections) {
        String name = typed == null ? "" : typed.strip();
        Legible.faultOfLine("a name", name, MAX_NAME).ifPresent(fault -> objections.add(new FieldError("name", fault)));
        return name;
    }

    private static TokenScope checkedScope(@Nullable String typed, ErrorList objections) {
        Optional<TokenScope> scope = typed == null ? Optional.of(TokenScope.WRITE) : TokenScope.ofKey(typed);
        if (scope.isEmpty()) {
            objections.add(new FieldError(
                    "scope", PersonChecks.told(typed, "a scope") + "it is one of " + TokenScope.keys() + "."));
        }
        return scope.orElse(TokenScope.READ);
    }

    private static Duration checkedLife(@Nullable Integer typed, ErrorList objections) {
        int days = typed == null ? USUAL_DAYS : typed;
        if (days < 1 || days > MAX_DAYS) {
            objections.add(new FieldError(
                    "expiresInDays", "A token ends after 1 to " + MAX_DAYS + " days, not after " + days + "."));
        }
        return Duration.ofDays(days);
    }

    private static String hash(String secret) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
