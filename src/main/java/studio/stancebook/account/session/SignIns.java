package studio.stancebook.account.session;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.AccessEnded;
import studio.stancebook.account.internal.SignInEvents;
import studio.stancebook.problem.NotFound;

/** Where people are signed in by page, and how that ends; tokens are apart from this. */
@Component
public class SignIns {

    /**
     * How long a person stays signed in at most, however often the session is used. A day, as NIST SP 800-63B has it for its
     * level AAL2 (from memory).
     */
    static final Duration LONGEST = Duration.ofHours(24);

    private final FindByIndexNameSessionRepository<? extends Session> sessions;
    private final Clock clock;
    private final SignInEvents signInEvents;

    SignIns(FindByIndexNameSessionRepository<? extends Session> sessions, Clock clock, SignInEvents signInEvents) {
        this.sessions = sessions;
        this.clock = clock;
        this.signInEvents = signInEvents;
    }

    /**
     * Notes in the session of a request that somebody signed in by it, and tells so.
     *
     * @param by what proved who it is, such as {@code password}
     */
    public void begin(SignedIn who, String by, HttpServletRequest request) {
        String machine = UserAgent.words(request.getHeader(HttpHeaders.USER_AGENT));
        request.getSession()
                .setAttribute(SignInMark.ATTRIBUTE, new SignInMark(machine, clock.instant(), request.isSecure()));
        signInEvents.begun(who, by, machine, request.getRemoteAddr());
    }

    /** Whether the session of a request has lasted as long as one may, or came to or from TLS after it began. */
    public boolean isOver(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session == null) {
            return false;
        }
        SignInMark mark = (SignInMark) session.getAttribute(SignInMark.ATTRIBUTE);
        return mark == null || isOver(mark.at()) || mark.overTls() != request.isSecure();
    }

    private boolean isOver(Instant since) {
        return !clock.instant().isBefore(since.plus(LONGEST));
    }

    /** Where a person is signed in, the place used last first. */
    public List<SignIn> of(long personId, @Nullable HttpSession here) {
        String idHere = here == null ? "" : here.getId();
        return open(personId).stream()
                .map(session -> read(session, session.getId().equals(idHere)))
                .sorted(Comparator.comparing(SignIn::here)
                        .reversed()
                        .thenComparing(SignIn::lastSeen, Comparator.reverseOrder()))
                .toList();
    }

    /** @throws NotFound if the person is not signed in at such a place, even if somebody else is */
    public void end(long personId, String key) {
        Session session = open(personId).stream()
                .filter(open -> key(open).equals(key))
                .findFirst()
                .orElseThrow(() -> new NotFound("sign-in", key));
        signInEvents.endedElsewhere(personId, read(session, false).machine());
        sessions.deleteById(session.getId());
    }

    /** Signs a person out everywhere. */
    public void endAll(long personId) {
        signInEvents.endedEverywhere(personId);
        open(personId).forEach(session -> sessions.deleteById(session.getId()));
    }

    /** Nothing is told of the single places: that the person may not sign in any more is in the record. */
    @TransactionalEventListener
    void close(AccessEnded event) {
        open(event.personId()).forEach(session -> sessions.deleteById(session.getId()));
    }

    private List<? extends Session> open(long personId) {
        return sessions.findByPrincipalName(SignedIn.principalName(personId)).values().stream()
                .filter(session -> !session.isExpired() && !isOver(since(session)))
                .toList();
    }

    private static SignIn read(Session session, boolean here) {
        SignInMark mark = session.getAttribute(SignInMark.ATTRIBUTE);
        return new SignIn(
                key(session), mark == null ? "" : mark.machine(), since(session), session.getLastAccessedTime(), here);
    }

    private static Instant since(Session session) {
        SignInMark mark = session.getAttribute(SignInMark.ATTRIBUTE);
        return mark == null ? session.getCreationTime() : mark.at();
    }

    /** Made of the session's id in a way that does not give it away. */
    private static String key(Session session) {
        return UUID.nameUUIDFromBytes(session.getId().getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
