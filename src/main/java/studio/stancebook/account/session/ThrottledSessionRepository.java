package studio.stancebook.account.session;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;

/**
 * Sessions that are written when something changed and else at most once a minute, and read once for a request.
 *
 * <p>That a session was used is not worth an error: where it cannot be noted, because the disk is full or the database
 * takes no writes, the page is shown all the same.
 */
final class ThrottledSessionRepository<S extends Session>
        implements FindByIndexNameSessionRepository<ThrottledSession<S>> {

    private static final Logger LOG = LoggerFactory.getLogger(ThrottledSessionRepository.class);

    private final FindByIndexNameSessionRepository<S> kept;

    /** What the request under way has read; none between requests, so that each sees at once that a session has ended. */
    private final ThreadLocal<@Nullable Map<String, ThrottledSession<S>>> ofRequest = new ThreadLocal<>();

    private ThrottledSessionRepository(FindByIndexNameSessionRepository<S> kept) {
        this.kept = kept;
    }

    static <S extends Session> ThrottledSessionRepository<S> over(FindByIndexNameSessionRepository<S> kept) {
        return new ThrottledSessionRepository<>(kept);
    }

    void requestBegins() {
        ofRequest.set(new HashMap<>());
    }

    void requestEnds() {
        ofRequest.remove();
    }

    @Override
    public ThrottledSession<S> createSession() {
        return ThrottledSession.made(kept.createSession());
    }

    @Override
    public void save(ThrottledSession<S> session) {
        if (session.asItWas()) {
            return;
        }
        try {
            kept.save(session.kept());
            session.saved();
        } catch (DataIntegrityViolationException overtaken) {
            LOG.debug(
                    "A session ended, or another request of it was faster, while it was used: {}",
                    overtaken.toString());
        } catch (DataAccessException failure) {
            if (session.changed()) {
                throw failure;
            }
            LOG.warn("That a session was used could not be noted: {}", failure.toString());
        }
    }

    @Override
    public @Nullable ThrottledSession<S> findById(String id) {
        Map<String, ThrottledSession<S>> known = ofRequest.get();
        return known == null ? read(id) : known.computeIfAbsent(id, this::read);
    }

    private @Nullable ThrottledSession<S> read(String id) {
        S found = kept.findById(id);
        return found == null ? null : ThrottledSession.found(found);
    }

    @Override
    public void deleteById(String id) {
        kept.deleteById(id);
        Map<String, ThrottledSession<S>> known = ofRequest.get();
        if (known != null) {
            known.remove(id);
        }
    }

    @Override
    public Map<String, ThrottledSession<S>> findByIndexNameAndIndexValue(String name, String value) {
        return kept.findByIndexNameAndIndexValue(name, value).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> ThrottledSession.found(entry.getValue())));
    }
}
