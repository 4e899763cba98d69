package studio.stancebook;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the server. */
@SpringBootApplication
public class Stancebook {

    public static void main(String[] args) {
        SpringApplication.run(Stancebook.class, args);
    }
}
