package studio.stancebook.operations.start;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.core.env.Environment;

/**
 * The database, which is opened by these settings before anything else is.
 *
 * @param url of JDBC: H2 or PostgreSQL
 */
@ConfigurationProperties("spring.datasource")
public record DatabaseSettings(
        @DefaultValue("") String url,
        @DefaultValue("") String username,
        @DefaultValue("") String password) {

    public DatabaseSettings {
        if (!DatabaseUrl.isOfKnownKind(url)) {
            throw new IllegalArgumentException("spring.datasource.url (STANCEBOOK_DB_URL) takes"
                    + " jdbc:postgresql://host/name, or is left out for a file in the data folder; \""
                    + DatabaseUrl.withoutSecrets(url) + "\" is no database that can be used here.");
        }
    }

    /** As they are set. */
    public static DatabaseSettings of(Environment environment) {
        return Binder.get(environment).bindOrCreate("spring.datasource", DatabaseSettings.class);
    }
}
