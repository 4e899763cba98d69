package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Impossible;

class CatalogueRulesTest {

    private static PackageDraft draft(String name, Integer year, List<String> queries) {
        return new PackageDraft(
                name, "any", year, Origin.DRAWING, Invented.dimensions(2700).build(), queries);
    }

    @ParameterizedTest
    @CsvSource({
        "Small, small",
        "Sport utility, sport-utility",
        "'  4x4 / Off-road ', 4x4-off-road",
        "--Vans--, vans",
        "Größe, gr-e"
    })
    void makeAKeyOfAHeading(String heading, String key) {
        assertThat(CatalogueRules.keyOf(heading)).contains(key);
        assertThat(CatalogueRules.key(key)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "---", "小型車"})
    void makeNoKeyOfAHeadingWithoutLettersOrDigits(String heading) {
        assertThat(CatalogueRules.keyOf(heading)).isEmpty();
    }

    @Test
    void makeAKeyOfAtMost60Characters() {
        assertThat(CatalogueRules.keyOf("a".repeat(59) + " b")).contains("a".repeat(59));
        assertThat(CatalogueRules.keyOf("a".repeat(80))).contains("a".repeat(60));
    }

    @Test
    void takeNamesOf1To200CharactersWithoutTheBlanksAround() {
        assertThat(draft(" " + "n".repeat(200) + " ", 2020, List.of()).name()).isEqualTo("n".repeat(200));
        assertThat(draft("n", 2020, List.of()).name()).isEqualTo("n");
        assertThatThrownBy(() -> draft("n".repeat(201), 2020, List.of())).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> draft("  ", 2020, List.of())).isInstanceOf(Impossible.class);
    }

    @Test
    void takeModelYearsFrom1880To2100OrNone() {
        assertThat(draft("n", 1880, List.of()).modelYear()).isEqualTo(1880);
        assertThat(draft("n", 2100, List.of()).modelYear()).isEqualTo(2100);
        assertThat(draft("n", null, List.of()).modelYear()).isNull();
        assertThatThrownBy(() -> draft("n", 1879, List.of())).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> draft("n", 2101, List.of())).isInstanceOf(Impossible.class);
    }

    @Test
    void cutLongQuestionsAndDropEmptyOnes() {
        List<String> queries =
                draft("n", 2020, List.of("q".repeat(600), " \n ", "one\ntwo")).queries();

        assertThat(queries).hasSize(2);
        assertThat(queries.get(0)).hasSize(500).endsWith("…");
        assertThat(queries.get(1)).isEqualTo("one two");
    }
}
