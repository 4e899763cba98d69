package studio.stancebook;

import java.time.Clock;
import java.time.Duration;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import studio.stancebook.activity.VerifyRecord;
import studio.stancebook.operations.StartUp;

/** Starts the server. */
@SpringBootApplication
public class Stancebook {

    public static void main(String[] args) {
        application().run(args);
    }

    /** The server, which looks at its settings, folder and database before it starts. */
    static SpringApplication application() {
        SpringApplication application = new SpringApplication(Stancebook.class);
        application.addInitializers(new StartUp(), new VerifyRecord());
        return application;
    }

    /** The time in whole milliseconds, which every database keeps as they are. */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.ofMillis(1));
    }
}
