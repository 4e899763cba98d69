package studio.stancebook.activity;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.Ordered;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.BadSqlGrammarException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import studio.stancebook.activity.internal.Chain;
import studio.stancebook.activity.internal.StoredLines;
import studio.stancebook.problem.CannotStart;

/**
 * Verifies the activity record instead of starting the server, where {@code --stancebook.verify-record} is given: one
 * sentence on the console, exit code 0 if the record is whole and 1 if it is not.
 */
public final class VerifyRecord implements ApplicationContextInitializer<ConfigurableApplicationContext>, Ordered {

    /** The setting that asks for it; given without a value or as {@code true}. */
    public static final String SETTING = "stancebook.verify-record";

    /** After the database was found to open. */
    @Override
    public int getOrder() {
        return LOWEST_PRECEDENCE;
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        Environment environment = context.getEnvironment();
        if (asked(environment)) {
            boolean whole = verify(environment, new PrintStream(System.out, true, StandardCharsets.UTF_8));
            System.exit(whole ? 0 : 1);
        }
    }

    private static boolean asked(Environment environment) {
        String typed = environment.getProperty(SETTING, "false");
        return switch (typed) {
            case "", "true" -> true;
            case "false" -> false;
            default ->
                throw new CannotStart(
                        SETTING + " takes true or false, not \"" + typed + "\".",
                        "Give --" + SETTING + " to verify the activity record, or leave it out to start the server.");
        };
    }

    /** Verifies the record in the database that the settings name, and says what was found. */
    static boolean verify(Environment environment, PrintStream console) {
        SingleConnectionDataSource database = new SingleConnectionDataSource(
                environment.getRequiredProperty("spring.datasource.url"),
                environment.getProperty("spring.datasource.username", ""),
                environment.getProperty("spring.datasource.password", ""),
                false);
        try {
            ChainCheck found = new Chain(new StoredLines(JdbcClient.create(database))).verify();
            console.println(found.finding());
            return found.whole();
        } catch (BadSqlGrammarException noTable) {
            console.println(
                    "There is no activity record in this database: no server of this version was ever started on it.");
            return false;
        } finally {
            database.destroy();
        }
    }
}
