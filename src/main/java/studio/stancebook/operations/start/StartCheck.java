package studio.stancebook.operations.start;

import org.springframework.core.env.ConfigurableEnvironment;

/** One kind of thing that must be so before the server starts. */
public interface StartCheck {

    /** @throws studio.stancebook.problem.CannotStart if it is not so */
    void check(ConfigurableEnvironment environment);
}
