package studio.stancebook.exchange.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import studio.stancebook.problem.FieldError;

class MappingJsonTest {

    private static final List<String> HEADINGS = List.of("id", "body", "wb", "tire", "rim", "x", "twin", "twin");

    private static Map<String, Object> complete() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", Map.of("field", "name"));
        tree.put("body", Map.of("field", "segment"));
        tree.put("wb", Map.of("dimension", "wheelbase", "unit", "in"));
        return tree;
    }

    private static void refuses(Map<String, Object> tree, String field, String said) {
        assertThatThrownBy(() -> MappingJson.read(tree, HEADINGS))
                .isInstanceOfSatisfying(
                        ImpossibleMapping.class,
                        refused -> assertThat(refused.errors()).anySatisfy(error -> {
                            assertThat(error.field()).isEqualTo(field);
                            assertThat(error.message()).contains(said);
                        }));
    }

    private static Map<String, Object> with(String heading, Object entry) {
        Map<String, Object> tree = complete();
        tree.put(heading, entry);
        return tree;
    }

    @Test
    void readsTheShapeOfTheInterface() {
        Map<String, Object> tree = complete();
        tree.put("tire", Map.of("dimension", "tyre", "part", "size"));
        tree.put("rim", Map.of("dimension", "tyre", "part", "rim"));

        Mapping mapping = MappingJson.read(tree, HEADINGS);

        assertThat(mapping.uses())
                .extracting(use -> use.index() + " " + use.target().id() + " " + use.unit())
                .containsExactly(
                        "0 field:name NONE",
                        "1 field:segment NONE",
                        "2 dimension:wheelbase IN",
                        "3 dimension:tyre:size NONE",
                        "4 dimension:tyre:rim NONE");
    }

    @Test
    void refusesWhatItCannotFollow() {
        refuses(with("colour", Map.of("field", "name")), "mapping.colour", "no column \"colour\"");
        refuses(with("twin", Map.of("field", "origin")), "mapping.twin", "two columns");
        refuses(with("x", "wheelbase"), "mapping.x", "object");
        refuses(with("x", Map.of()), "mapping.x", "either a field or a dimension");
        refuses(with("x", Map.of("field", "a", "dimension", "b")), "mapping.x", "either");
        refuses(with("x", Map.of("field", "colour")), "mapping.x", "modelYear");
        refuses(with("x", Map.of("dimension", "wing")), "mapping.x", "\"wing\"");
        refuses(with("x", Map.of("dimension", "cowl")), "mapping.x", "x, z");
        refuses(with("x", Map.of("dimension", "tyre", "part", "valve")), "mapping.x", "size, rim");
        refuses(with("x", Map.of("dimension", "overallLength", "unit", "ft")), "mapping.x", "mm, cm, m, in");
        refuses(with("x", Map.of("dimension", "overallLength", "unit", "deg")), "mapping.x", "mm, cm, m, in");
        refuses(with("x", Map.of("dimension", "rampAngle", "unit", "deg-from-vertical")), "mapping.x", "deg");
        refuses(with("x", Map.of("dimension", "overallLength", "unit", List.of())), "mapping.x", "object");
    }

    @Test
    void refusesTwoColumnsForOneValue() {
        refuses(with("x", Map.of("field", "name")), "mapping.x", "both set");
        Map<String, Object> tree = with("tire", Map.of("dimension", "tyre"));
        tree.put("rim", Map.of("dimension", "frontTyre"));
        refuses(tree, "mapping.rim", "both set frontTyre");
        tree = with("tire", Map.of("dimension", "tyreDiameter"));
        tree.put("rim", Map.of("dimension", "rearTyreDiameter"));
        refuses(tree, "mapping.rim", "both set rearTyreDiameter");
    }

    @Test
    void refusesHalvesAndWhatIsNeeded() {
        refuses(with("x", Map.of("dimension", "cowl", "part", "x")), "mapping.x", "cowl.z");
        refuses(with("x", Map.of("dimension", "tyre", "part", "rim")), "mapping.x", "frontTyre:size");
        refuses(with("x", Map.of("dimension", "outline", "part", "2")), "mapping.x", "outline.1");
        assertThatThrownBy(() -> MappingJson.read(Map.of(), HEADINGS))
                .isInstanceOfSatisfying(
                        ImpossibleMapping.class,
                        refused -> assertThat(refused.errors())
                                .extracting(FieldError::message)
                                .containsExactly(
                                        "No column holds the name; every package needs one.",
                                        "No column holds the segment; every package needs one.",
                                        "No column holds the wheelbase; every package needs one."));
    }
}
