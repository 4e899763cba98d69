package studio.stancebook.account.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.core.serializer.support.SerializingConverter;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.MapSession;

class ThrottledSessionRepositoryTest {

    private final Store store = new Store();
    private final ThrottledSessionRepository<MapSession> sessions = ThrottledSessionRepository.over(store);

    @Test
    void notesUseToTheMinute() {
        MapSession kept = new MapSession();
        Instant start = kept.getLastAccessedTime();
        ThrottledSession<MapSession> session = ThrottledSession.found(kept);

        session.setLastAccessedTime(start.plusSeconds(59));
        assertThat(kept.getLastAccessedTime()).isEqualTo(start);
        session.setLastAccessedTime(start.plusSeconds(60));
        assertThat(kept.getLastAccessedTime()).isEqualTo(start.plusSeconds(60));
    }

    @Test
    void showsThePageWhenUseCannotBeNoted() {
        ThrottledSession<MapSession> session = ThrottledSession.found(new MapSession());
        session.setLastAccessedTime(session.getLastAccessedTime().plusSeconds(60));
        store.failure = new DataAccessResourceFailureException("no room");

        sessions.save(session);

        assertThat(store.tried).isEqualTo(1);
    }

    @Test
    void savesNothingWhereNothingIsNew() {
        ThrottledSession<MapSession> session = ThrottledSession.found(new MapSession());
        session.setLastAccessedTime(session.getLastAccessedTime().plusSeconds(59));

        sessions.save(session);
        assertThat(store.tried).isZero();

        session.setAttribute("a", "b");
        sessions.save(session);
        sessions.save(session);
        assertThat(store.tried).isEqualTo(1);
    }

    @Test
    void readsASessionOnceForARequestAndAnewForTheNext() {
        sessions.findById("a");
        sessions.findById("a");
        assertThat(store.read).isEqualTo(2);

        sessions.requestBegins();
        assertThat(sessions.findById("a")).isSameAs(sessions.findById("a"));
        assertThat(store.read).isEqualTo(3);
        sessions.deleteById("a");
        sessions.findById("a");
        assertThat(store.read).isEqualTo(4);
        sessions.requestEnds();

        sessions.requestBegins();
        sessions.findById("a");
        assertThat(store.read).isEqualTo(5);
        sessions.requestEnds();
    }

    @Test
    void failsWhenAChangeCannotBeKept() {
        ThrottledSession<MapSession> session = ThrottledSession.found(new MapSession());
        session.setAttribute("a", "b");
        store.failure = new DataAccessResourceFailureException("no room");

        assertThatThrownBy(() -> sessions.save(session)).isSameAs(store.failure);
        assertThatThrownBy(() -> sessions.save(sessions.createSession())).isSameAs(store.failure);
    }

    @Test
    void givesWayToAFasterRequestOfTheSameSession() {
        ThrottledSession<MapSession> session = ThrottledSession.found(new MapSession());
        session.setAttribute("a", "b");
        store.failure = new DuplicateKeyException("there already");

        sessions.save(session);

        assertThat(store.tried).isEqualTo(1);
    }

    @Test
    void readsNothingFromWhatAnotherVersionWrote() {
        byte[] written = new SerializingConverter().convert(Duration.ofHours(1));
        byte[] cut = java.util.Arrays.copyOf(written, written.length - 3);

        assertThat(new ForgivingDeserializer().convert(written)).isEqualTo(Duration.ofHours(1));
        assertThat(new ForgivingDeserializer().convert(cut)).isNull();
        assertThat(new ForgivingDeserializer().convert(new byte[] {1, 2, 3})).isNull();
    }

    /** Counts what is saved, and fails if it is told to. */
    private static final class Store implements FindByIndexNameSessionRepository<MapSession> {

        private RuntimeException failure;
        private int tried;
        private int read;
        private final List<MapSession> saved = new ArrayList<>();

        @Override
        public MapSession createSession() {
            return new MapSession();
        }

        @Override
        public void save(MapSession session) {
            tried++;
            if (failure != null) {
                throw failure;
            }
            saved.add(session);
        }

        @Override
        public MapSession findById(String id) {
            read++;
            return new MapSession(id);
        }

        @Override
        public void deleteById(String id) {}

        @Override
        public Map<String, MapSession> findByIndexNameAndIndexValue(String name, String value) {
            return Map.of();
        }
    }
}
