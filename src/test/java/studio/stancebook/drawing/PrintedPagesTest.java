package studio.stancebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;

/** A page with a part that was made before comes whole, compressed for those alone who take it so. */
@StudioTest
class PrintedPagesTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private StudioBrowser browser;
    private String page = "";

    @BeforeEach
    void makeAPage() {
        String segment = Invented.key("printed");
        segments.create(segment, "Größe <!--print--> 寸法", "");
        catalogue.add(Invented.draft(segment, "Tern", 2800), "Tests");
        browser = studio.browser(Role.VIEWER);
        page = "/segments/" + segment;
    }

    @Test
    void comesCompressedToThoseWhoTakeGzip() throws IOException {
        String plain = browser.get(page).body();

        for (String accepted : List.of("gzip", "gzip, deflate, br, zstd", "br,GZIP")) {
            HttpResponse<byte[]> answer = browser.get(page, accepted);

            assertThat(answer.headers().firstValue("Content-Encoding")).hasValue("gzip");
            assertThat(answer.headers().allValues("Vary")).anyMatch(vary -> vary.equalsIgnoreCase("Accept-Encoding"));
            assertThat(answer.headers().firstValueAsLong("Content-Length")).hasValue(answer.body().length);
            assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/html;charset=UTF-8");
            assertThat(answer.body().length).isLessThan(plain.length() / 3);
            try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(answer.body()))) {
                assertThat(withoutTokens(new String(in.readAllBytes(), StandardCharsets.UTF_8)))
                        .isEqualTo(withoutTokens(plain));
            }
        }
    }

    @Test
    void comesAsItIsToOthers() {
        for (String accepted : List.of("identity", "br", "gzip;q=0")) {
            HttpResponse<byte[]> answer = browser.get(page, accepted);

            assertThat(answer.headers().firstValue("Content-Encoding"))
                    .as(accepted)
                    .isEmpty();
            assertThat(new String(answer.body(), StandardCharsets.UTF_8)).endsWith("</html>\n");
        }
    }

    @Test
    void hasItsPartInItsPlaceWhateverTheWordsAroundItSay() {
        String plain = browser.get(page).body();

        assertThat(plain)
                .contains("<h1>Größe &lt;!--print--&gt; 寸法</h1>")
                .doesNotContain("<!--print-->")
                .containsSubsequence("<main", "<form", "id=\"class\"", "</main>", "<footer", "</html>");
    }

    /** Each answer has tokens of its own. */
    private static String withoutTokens(String page) {
        return page.replaceAll("(name=\"_csrf\"\\s+value|name=\"csrf\"[^>]*content)=\"[^\"]*\"", "");
    }
}
