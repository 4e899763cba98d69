package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** No key can be a word that stands in the same place of an address. */
@StudioTest
class ReservedKeysTest {

    @Autowired
    StudioClients studio;

    @Autowired
    RequestMappingHandlerMapping requestMappingHandlerMapping;

    /** The words behind the beginning of an address, where other routes have a variable. */
    private Set<String> wordsBehind(String... beginnings) {
        Set<String> words = new TreeSet<>();
        requestMappingHandlerMapping
                .getHandlerMethods()
                .keySet()
                .forEach(info -> info.getPatternValues().forEach(pattern -> {
                    for (String beginning : beginnings) {
                        if (pattern.startsWith(beginning + "/")) {
                            words.add(pattern.substring(beginning.length() + 1).replaceFirst("/.*", ""));
                        }
                    }
                }));
        words.removeIf(word -> word.startsWith("{"));
        return words;
    }

    @ParameterizedTest
    @CsvSource({"/segments, /api/v1/segments", "/studio/ratios, /api/v1/measures"})
    void areRefusedAsKeys(String page, String call) {
        String body = call.endsWith("segments")
                ? "{\"key\":\"$\",\"name\":\"Any\",\"description\":\"\"}"
                : "{\"key\":\"$\",\"name\":\"Any\",\"numerator\":[\"wheelbase\"],\"denominator\":[\"overallLength\"]}";
        Set<String> words = wordsBehind(page, call);

        assertThat(words).isNotEmpty();
        for (String word : words) {
            studio.api(Role.LEAD)
                    .post()
                    .uri(call)
                    .contentType(MediaType.APPLICATION_JSON)
                    .body(body.replace("$", word))
                    .exchange()
                    .expectStatus()
                    .isEqualTo(422)
                    .expectBody()
                    .jsonPath("$.errors[0].field")
                    .isEqualTo("key")
                    .jsonPath("$.errors[0].message")
                    .value(String.class, message -> assertThat(message).contains("own addresses"));
        }
    }
}
