package studio.stancebook.account.session;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.session.Session;

/** A session that notes when it was used to the minute only, so that most requests write nothing. */
final class ThrottledSession<S extends Session> implements Session {

    /** Small beside the half hour and the eight hours after which a session that is not used ends. */
    static final Duration STEP = Duration.ofMinutes(1);

    private final S kept;
    private boolean changed;
    private boolean used;

    private ThrottledSession(S kept, boolean changed) {
        this.kept = kept;
        this.changed = changed;
    }

    static <S extends Session> ThrottledSession<S> made(S session) {
        return new ThrottledSession<>(session, true);
    }

    static <S extends Session> ThrottledSession<S> found(S session) {
        return new ThrottledSession<>(session, false);
    }

    S kept() {
        return kept;
    }

    /** Whether more than the time of use is to be kept. */
    boolean changed() {
        return changed;
    }

    /** Whether there is nothing to keep, not even a time of use. */
    boolean asItWas() {
        return !changed && !used;
    }

    void saved() {
        changed = false;
        used = false;
    }

    @Override
    public void setLastAccessedTime(Instant now) {
        if (Duration.between(kept.getLastAccessedTime(), now).compareTo(STEP) >= 0) {
            used = true;
            kept.setLastAccessedTime(now);
        }
    }

    @Override
    public String changeSessionId() {
        changed = true;
        return kept.changeSessionId();
    }

    @Override
    public void setAttribute(String name, Object value) {
        changed = true;
        kept.setAttribute(name, value);
    }

    @Override
    public void removeAttribute(String name) {
        changed = true;
        kept.removeAttribute(name);
    }

    @Override
    public void setMaxInactiveInterval(Duration interval) {
        changed = true;
        kept.setMaxInactiveInterval(interval);
    }

    @Override
    public <T> @Nullable T getAttribute(String name) {
        return kept.getAttribute(name);
    }

    @Override
    public String getId() {
        return kept.getId();
    }

    @Override
    public Set<String> getAttributeNames() {
        return kept.getAttributeNames();
    }

    @Override
    public Instant getCreationTime() {
        return kept.getCreationTime();
    }

    @Override
    public Instant getLastAccessedTime() {
        return kept.getLastAccessedTime();
    }

    @Override
    public Duration getMaxInactiveInterval() {
        return kept.getMaxInactiveInterval();
    }

    @Override
    public boolean isExpired() {
        return kept.isExpired();
    }
}
