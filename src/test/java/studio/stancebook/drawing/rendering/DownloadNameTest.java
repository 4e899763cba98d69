package studio.stancebook.drawing.rendering;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpHeaders;

/** Names of files: RFC 6266, 4.1 and 4.3, and its appendix D on what every browser reads. */
class DownloadNameTest {

    @Test
    void saysWhatItIs() {
        assertThat(DownloadName.of("pdf", "Tern", "r2", "review")).hasToString("tern-r2-review.pdf");
    }

    /** A quote, a line break, a path and letters outside ASCII cannot get into the header. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            'Tern "2"; filename=x.exe', tern-2-filename-x-exe.svg
            '../../etc/passwd', etc-passwd.svg
            'Göteborg Ø é', goteborg-e.svg
            '燕', drawing.svg
            """)
    void holdsNothingButLettersDigitsAndHyphens(String name, String expected) {
        assertThat(DownloadName.of("svg", name)).hasToString(expected);
    }

    @Test
    void endsNoLineOfTheHeader() {
        assertThat(DownloadName.of("svg", "a\r\nSet-Cookie: b")).hasToString("a-set-cookie-b.svg");
    }

    @Test
    void isNoLongerThanAFileSystemTakes() {
        assertThat(DownloadName.of("svg", "x".repeat(500), "r2").toString()).hasSizeLessThan(120);
    }

    @Test
    void makesABrowserSaveTheAnswer() {
        assertThat(DownloadName.of("pdf", "Tern").header().getFirst(HttpHeaders.CONTENT_DISPOSITION))
                .isEqualTo("attachment; filename=\"tern.pdf\"");
    }
}
