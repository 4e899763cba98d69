package studio.stancebook.operations.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DatabaseUrlTest {

    @ParameterizedTest
    @CsvSource({
        "jdbc:h2:file:/var/studio/book;WRITE_DELAY=0, /var/studio/book.mv.db",
        "jdbc:h2:/var/studio/book, /var/studio/book.mv.db",
        "jdbc:h2:file:async:/var/studio/book, /var/studio/book.mv.db",
        "jdbc:h2:file:/var/../srv/book, /srv/book.mv.db",
    })
    void namesTheFile(String url, String file) {
        assertThat(DatabaseUrl.file(url)).hasValue(Path.of(file));
    }

    @Test
    void namesAFileInTheFolderOfTheProcessAndAtHome() {
        assertThat(DatabaseUrl.file("jdbc:h2:file:./data/book"))
                .hasValue(Path.of("data/book.mv.db").toAbsolutePath());
        assertThat(DatabaseUrl.file("jdbc:h2:~/book")).hasValue(Path.of(System.getProperty("user.home"), "book.mv.db"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "jdbc:h2:mem:studio;DB_CLOSE_DELAY=-1",
                "jdbc:h2:mem:",
                "jdbc:h2:tcp://db:9092/studio",
                "jdbc:h2:nioMemFS:studio",
                "jdbc:postgresql://db/studio",
                ""
            })
    void namesNoFileWhereThereIsNone(String url) {
        assertThat(DatabaseUrl.file(url)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "jdbc:postgresql://db/studio?user=me&password=secret&ssl=true, jdbc:postgresql://db/studio?user=me&password=…&ssl=true",
        "postgres://me:secret@db/studio, postgres://me:…@db/studio",
        "jdbc:h2:file:./book;PASSWORD=secret;WRITE_DELAY=0, jdbc:h2:file:./book;PASSWORD=…;WRITE_DELAY=0",
        "jdbc:postgresql://db:5432/studio, jdbc:postgresql://db:5432/studio",
    })
    void isShownWithoutSecrets(String url, String shown) {
        assertThat(DatabaseUrl.withoutSecrets(url)).isEqualTo(shown);
    }
}
