package studio.stancebook;

import java.time.Clock;
import java.time.Duration;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;

/** Starts the server. */
@SpringBootApplication
public class Stancebook {

    public static void main(String[] args) {
        SpringApplication.run(Stancebook.class, args);
    }

    /** The time in whole milliseconds, which every database keeps as they are. */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.ofMillis(1));
    }
}
