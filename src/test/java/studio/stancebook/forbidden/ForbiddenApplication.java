package studio.stancebook.forbidden;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** An application that breaks a rule on purpose, so that a test can see the rule at work. It is never started. */
@SpringBootApplication
public class ForbiddenApplication {}
