package studio.stancebook.account.session;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.SignInDeeds;
import studio.stancebook.problem.NotFound;

/** Where people are signed in by page, and how that ends; tokens are apart from this. */
@Component
public class SignIns {

    private final FindByIndexNameSessionRepository<? extends Session> sessions;
    private final Clock clock;
    private final SignInDeeds deeds;

    SignIns(FindByIndexNameSessionRepository<? extends Session> sessions, Clock clock, SignInDeeds deeds) {
        this.sessions = sessions;
        this.clock = clock;
        this.deeds = deeds;
    }

    /**
     * Notes in the session of a request that somebody signed in by it, and tells so.
     *
     * @param by what proved who it is, such as {@code password}
     */
    public void begin(SignedIn who, String by, HttpServletRequest request) {
        String machine = Machine.words(request.getHeader(HttpHeaders.USER_AGENT));
        request.getSession().setAttribute(SignInMark.ATTRIBUTE, new SignInMark(machine, clock.instant()));
        deeds.begun(who, by, machine, request.getRemoteAddr());
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
        deeds.endedElsewhere(personId, read(session, false).machine());
        sessions.deleteById(session.getId());
    }

    /** Signs a person out everywhere. */
    public void endAll(long personId) {
        deeds.endedEverywhere(personId);
        open(personId).forEach(session -> sessions.deleteById(session.getId()));
    }

    private List<? extends Session> open(long personId) {
        return sessions.findByPrincipalName(SignedIn.principalName(personId)).values().stream()
                .filter(session -> !session.isExpired())
                .toList();
    }

    private static SignIn read(Session session, boolean here) {
        SignInMark mark = session.getAttribute(SignInMark.ATTRIBUTE);
        return new SignIn(
                key(session),
                mark == null ? "" : mark.machine(),
                mark == null ? session.getCreationTime() : mark.at(),
                session.getLastAccessedTime(),
                here);
    }

    /** Made of the session's id in a way that does not give it away. */
    private static String key(Session session) {
        return UUID.nameUUIDFromBytes(session.getId().getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
