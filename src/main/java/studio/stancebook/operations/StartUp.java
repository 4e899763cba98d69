package studio.stancebook.operations;

import java.util.List;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.ConfigurableEnvironment;
import studio.stancebook.operations.backup.RestoreCheck;
import studio.stancebook.operations.start.DatabaseCheck;
import studio.stancebook.operations.start.FolderCheck;
import studio.stancebook.operations.start.LogFormat;
import studio.stancebook.operations.start.ProfileCheck;
import studio.stancebook.operations.start.ServerSettings;
import studio.stancebook.operations.start.SettingNames;
import studio.stancebook.operations.start.StartCheck;

/** Looks at settings, data folder and database before anything starts, so that what is wrong can be told plainly. */
public final class StartUp implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final List<StartCheck> CHECKS = List.of(
            new SettingNames(),
            new LogFormat(),
            new ProfileCheck(),
            ServerSettings::of,
            new RestoreCheck(),
            new FolderCheck(),
            new DatabaseCheck());

    /** @throws studio.stancebook.problem.CannotStart with the first thing that is wrong */
    @Override
    public void initialize(ConfigurableApplicationContext context) {
        ConfigurableEnvironment environment = context.getEnvironment();
        CHECKS.forEach(check -> check.check(environment));
    }
}
