package studio.stancebook.web.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.problem.ProblemType;

@StudioTest
class ProblemPageTest {

    @Autowired
    StudioClients studio;

    @ParameterizedTest
    @EnumSource(ProblemType.class)
    void explainsEveryKindToEverybody(ProblemType type) {
        HttpResponse<String> page = studio.browser().get("/problems/" + type.slug());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains(type.title()).doesNotContain("??");
    }

    @ParameterizedTest
    @EnumSource(ProblemType.class)
    void isDocumented(ProblemType type) throws IOException {
        assertThat(Files.readString(Path.of("docs/problems.md")))
                .contains("\n## " + type.slug() + "\n" + type.status() + ". ");
    }

    @Test
    void knowsNoOtherKind() {
        assertThat(studio.browser().get("/problems/nonsense").statusCode()).isEqualTo(404);
    }
}
