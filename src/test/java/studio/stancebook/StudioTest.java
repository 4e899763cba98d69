package studio.stancebook;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.context.annotation.Import;

/**
 * A test against the whole server, on a free port, over an H2 database in memory of its own.
 *
 * <p>Server and database are shared by all test classes with the same annotations, to start once: a test makes what it
 * needs under names of its own and counts on nothing else being there or not. For the same test on PostgreSQL, put the
 * tests into an abstract class and extend it twice, once with {@link StudioTest} alone and once with {@link OnPostgres}
 * as well.
 *
 * <p>Inject {@link StudioClients} to talk to the server.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {
            "stancebook.data=target/studio-test-${PID}",
            "spring.datasource.url=jdbc:h2:mem:${random.uuid};DB_CLOSE_DELAY=-1",
            "spring.datasource.username=sa",
            "spring.datasource.password=",
            "spring.datasource.hikari.maximum-pool-size=6",
            // A database in memory cannot be opened anew, so the connections that made its tables stay: decision 0065.
            "spring.datasource.hikari.max-lifetime=0",
            "spring.jpa.properties.hibernate.session_factory.statement_inspector=studio.stancebook.SqlOfThread",
            // Tests of all kinds come from one address.
            "stancebook.limits.requests-per-second=100000",
            // The lowest cost there is: many people sign in during the tests.
            "stancebook.passwords.bcrypt-strength=4"
        })
@Import({StudioClients.class, CountedHashes.class})
public @interface StudioTest {}
