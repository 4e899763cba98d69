package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.codec.digest.DigestUtils;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.MediaType;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;

/** The activity record as pages and calls. */
@StudioTest
class RecordPagesTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    ActivityRecord activity;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("record-page");
        segments.create(segment, "Segment <b>of</b> a test", "=1+1");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void areForLeadsOnly(Role role) {
        int expected = role == Role.LEAD ? 200 : 403;
        StudioBrowser browser = studio.browser(role);

        for (String path : List.of("", "/verification", "/export")) {
            assertThat(browser.get("/studio/record" + path).statusCode()).isEqualTo(expected);
            studio.api(role)
                    .get()
                    .uri("/api/v1/activity" + path)
                    .exchange()
                    .expectStatus()
                    .isEqualTo(expected);
        }
        assertThat(browser.get("/studio").body().contains("/studio/record")).isEqualTo(role == Role.LEAD);
    }

    @Test
    void showWhoDidWhatHarmlessly() {
        String page = studio.browser(Role.LEAD)
                .get("/studio/record?subject=" + segment)
                .body();

        assertThat(page)
                .contains(
                        "segment made", "Segment &lt;b&gt;of&lt;/b&gt; a test", "the server itself", "=1+1", "nothing")
                .doesNotContain("<b>of");
    }

    @Test
    void sayWhenNothingFits() {
        assertThat(studio.browser(Role.LEAD)
                        .get("/studio/record?subject=no-such-thing")
                        .body())
                .contains("No line matches");
    }

    @ParameterizedTest
    @ValueSource(strings = {"from=yesterday", "to=2031-13-01", "person=Ada", "from=-999999999-01-01T00:00:00Z"})
    void refuseWhatCannotBeRead(String query) {
        HttpResponse<String> page = studio.browser(Role.LEAD).get("/studio/record?" + query);

        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("f-" + query.substring(0, query.indexOf('=')) + "-error");
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/activity?" + query)
                .exchange()
                .expectStatus()
                .isBadRequest()
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(query.substring(0, query.indexOf('=')));
    }

    /** A field for days is empty where its value is none: HTML, value sanitization of type=date. */
    @ParameterizedTest
    @CsvSource({
        "from=yesterday, yesterday, text",
        "to=2031-13-01, 2031-13-01, text",
        "from=2031-05-06, 2031-05-06, date",
        "from=2031-05-06T07:08:09Z, 2031-05-06T07:08:09Z, text"
    })
    void keepWhatWasTypedForADayInSight(String query, String typed, String type) {
        Element field = Jsoup.parse(
                        studio.browser(Role.LEAD).get("/studio/record?" + query).body())
                .expectFirst("[name=" + query.substring(0, query.indexOf('=')) + "]");

        assertThat(field.attr("value")).isEqualTo(typed);
        assertThat(field.attr("type")).isEqualTo(type);
    }

    @Test
    void answerProgramsInPages() {
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/activity?kind=segment&subject=" + segment + "&size=1&from=2020-01-01&to=2999-12-31")
                .exchange()
                .expectStatus()
                .isOk()
                .expectHeader()
                .exists("Link")
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(1)
                .jsonPath("$.items[0].action")
                .isEqualTo("made")
                .jsonPath("$.items[0].line")
                .isNumber();
    }

    @Test
    void verifyTheChain() {
        assertThat(studio.browser(Role.LEAD).get("/studio/record/verification").body())
                .contains("No line was changed", "The activity record is whole: ");
        studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/activity/verification")
                .exchange()
                .expectBody()
                .jsonPath("$.whole")
                .isEqualTo(true)
                .jsonPath("$.brokenLine")
                .isEmpty();
    }

    @Test
    void takeTheRecordOutSafeForSpreadsheets() {
        String csv = studio.browser(Role.LEAD)
                .get("/studio/record/export?format=csv&subject=" + segment)
                .body();

        assertThat(csv)
                .startsWith("line,at,byId,by,action,kind,subject,title,field,from,to,hash\r\n")
                .contains(",made,segment," + segment + ",Segment <b>of</b> a test,description,,'=1+1,");
    }

    @Test
    void takeTheRecordOutWhole() {
        String lines = studio.browser(Role.LEAD)
                .get("/studio/record/export?format=jsonl&subject=" + segment)
                .body();

        assertThat(lines.lines()).hasSize(1);
        assertThat(lines)
                .endsWith("}\n")
                .contains("{\"field\":\"description\",\"from\":null,\"to\":\"=1+1\"}", "\"previousHash\":\"");
        assertThat(studio.browser(Role.LEAD)
                        .get("/studio/record/export?format=xml")
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void nameWhoSentAProgramsRequestAndTellAFileInOneLine() {
        String text = "name,segment,wheelbase\n=one," + segment + ",2500\ntwo," + segment + ",2600\n";
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8)) {
            @Override
            public String getFilename() {
                return segment + ".csv";
            }
        });
        studio.api(Role.DESIGNER)
                .post()
                .uri("/api/v1/packages/imports")
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(parts)
                .exchange()
                .expectStatus()
                .isOk();

        ActivityLine line = newest();

        assertThat(line.title()).isEqualTo(segment + ".csv");
        assertThat(line.action() + " " + line.kind()).isEqualTo("brought in packages");
        assertThat(line.byId()).isEqualTo(studio.person(Role.DESIGNER).personId());
        assertThat(line.changes())
                .contains(
                        new FieldChange("rows", null, "2"),
                        new FieldChange("broughtIn", null, "2"),
                        new FieldChange("sha256", null, sha256(text)));
    }

    private static String sha256(String text) {
        return DigestUtils.sha256Hex(text);
    }

    private ActivityLine newest() {
        return activity.list(ActivityFilter.all(), PageRequest.of(0, 1))
                .getContent()
                .get(0);
    }
}
