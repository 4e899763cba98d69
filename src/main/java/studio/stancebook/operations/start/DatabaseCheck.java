package studio.stancebook.operations.start;

import java.sql.DriverManager;
import java.sql.SQLException;
import org.springframework.core.env.ConfigurableEnvironment;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.CannotStart;

/** The database opens. */
public final class DatabaseCheck implements StartCheck {

    @Override
    public void check(ConfigurableEnvironment environment) {
        DatabaseSettings database = DatabaseSettings.of(environment);
        String url = database.url();
        try {
            DriverManager.getConnection(url, database.username(), database.password())
                    .close();
            DatabaseUrl.file(url).ifPresent(PrivateFile::make);
        } catch (SQLException e) {
            throw told(url, e);
        }
    }

    private static CannotStart told(String url, SQLException cause) {
        CannotStart refusal = StoreTrouble.of(cause)
                .map(trouble -> StartWords.about(trouble, url))
                .orElseGet(() -> new CannotStart(
                        "The database " + DatabaseUrl.withoutSecrets(url) + " cannot be opened: " + firstLine(cause),
                        "Check STANCEBOOK_DB_URL, STANCEBOOK_DB_USER and STANCEBOOK_DB_PASSWORD."));
        refusal.initCause(cause);
        return refusal;
    }

    private static String firstLine(SQLException cause) {
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    }
}
