package studio.stancebook.edge;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioTest;

/**
 * A server as it is set up behind a reverse proxy, which is at 127.0.0.9, and so impatient that tests of patience take
 * seconds. Requests need {@code Host: studio.example}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@StudioTest
@TestPropertySource(
        properties = {
            "stancebook.public-url=https://studio.example",
            "stancebook.trusted-proxies=" + AtTheEdge.PROXY,
            "stancebook.limits.requests-per-second=250",
            "stancebook.limits.timeout=1s"
        })
@Import(FilledHeap.class)
public @interface AtTheEdge {

    String PROXY = "127.0.0.9";
}
