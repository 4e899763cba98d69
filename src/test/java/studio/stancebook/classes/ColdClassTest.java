package studio.stancebook.classes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DelegatingDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.layout.CurrentLayout;

/** Many people who ask for a class that is not in memory yet, and few connections. */
abstract class ColdClassTest {

    private static final int CONNECTIONS = 3;
    private static final int PEOPLE = 20;

    /** A thread that goes on only when the class is read, or that is done. */
    private static final Set<Thread.State> AT_REST =
            EnumSet.of(Thread.State.WAITING, Thread.State.BLOCKED, Thread.State.TERMINATED);

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    ClassRevisions revisions;

    @Autowired
    CurrentLayout layouts;

    @Autowired
    DataSource database;

    @Test
    void isReadOnceWhileAllOthersWaitWithoutAConnection() throws Exception {
        String segment = segmentOfOne();
        try (HikariDataSource pool = fewConnections()) {
            CountDownLatch released = new CountDownLatch(1);
            ClassSnapshots snapshots = over(new Slow(pool, released));
            List<FutureTask<ClassSnapshot>> asked = askedByMany(() -> snapshots.of(segment));
            int busy = pool.getHikariPoolMXBean().getActiveConnections();
            released.countDown();

            List<ClassSnapshot> answers = new ArrayList<>();
            for (FutureTask<ClassSnapshot> one : asked) {
                answers.add(one.get());
            }
            assertThat(answers).hasSize(PEOPLE).containsOnly(answers.get(0));
            assertThat(busy).isOne();
        }
    }

    /** So that the test above can fail: this is what each of them did once. */
    @Test
    void cannotBeHadByAllIfEachHoldsAConnectionWhileWaiting() throws Exception {
        String segment = segmentOfOne();
        try (HikariDataSource pool = fewConnections()) {
            CountDownLatch released = new CountDownLatch(1);
            DataSource slow = new Slow(pool, released);
            ClassSnapshots snapshots = over(slow);
            TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(slow));
            List<FutureTask<ClassSnapshot>> asked =
                    askedByMany(() -> transaction.execute(status -> snapshots.of(segment)));
            released.countDown();

            assertThat(asked)
                    .anySatisfy(one ->
                            assertThatThrownBy(one::get).hasRootCauseInstanceOf(SQLTransientConnectionException.class));
        }
    }

    private String segmentOfOne() {
        String segment = Invented.key("cold");
        segments.create(segment, "Segment of a test", "");
        catalogue.add(Invented.draft(segment, "One", 2800), new Author(null, "Designer"));
        return segment;
    }

    /** Asks at the same time, and comes back when nobody gets any further before the class is read. */
    private static List<FutureTask<ClassSnapshot>> askedByMany(Callable<ClassSnapshot> question) {
        List<FutureTask<ClassSnapshot>> asked =
                Stream.generate(() -> new FutureTask<>(question)).limit(PEOPLE).toList();
        List<Thread> people = asked.stream().map(Thread::new).toList();
        people.forEach(Thread::start);
        await().atMost(Duration.ofSeconds(60))
                .until(() -> people.stream().allMatch(person -> AT_REST.contains(person.getState())));
        return asked;
    }

    private HikariDataSource fewConnections() throws SQLException {
        HikariConfig config = new HikariConfig();
        database.unwrap(HikariDataSource.class).copyStateTo(config);
        config.setPoolName("few");
        config.setMaximumPoolSize(CONNECTIONS);
        config.setConnectionTimeout(500);
        return new HikariDataSource(config);
    }

    private ClassSnapshots over(DataSource source) {
        return new ClassSnapshots(
                new ClassReader(JdbcClient.create(source)), revisions, layouts, new JdbcTransactionManager(source));
    }

    /** Answers what is asked about packages only when released. */
    private static final class Slow extends DelegatingDataSource {

        private final CountDownLatch released;

        Slow(DataSource target, CountDownLatch released) {
            super(target);
            this.released = released;
        }

        @Override
        public Connection getConnection() throws SQLException {
            Connection connection = super.getConnection();
            return proxy(Connection.class, connection, false);
        }

        private <T> T proxy(Class<T> kind, T target, boolean held) {
            return kind.cast(Proxy.newProxyInstance(
                    kind.getClassLoader(), new Class<?>[] {kind}, (self, method, arguments) -> {
                        if (held && method.getName().startsWith("execute")) {
                            released.await();
                        }
                        try {
                            Object result = method.invoke(target, arguments);
                            return result instanceof PreparedStatement statement && arguments != null
                                    ? proxy(
                                            PreparedStatement.class,
                                            statement,
                                            String.valueOf(arguments[0]).contains("benchmark_package"))
                                    : result;
                        } catch (InvocationTargetException thrown) {
                            throw thrown.getCause();
                        }
                    }));
        }
    }
}
