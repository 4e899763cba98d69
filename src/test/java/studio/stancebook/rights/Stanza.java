package studio.stancebook.rights;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What {@code every-route.txt} says of a route.
 *
 * @param asked method, pattern, and a question where one is asked
 * @param facts what stands below it, by the first word
 */
record Stanza(String asked, Map<String, String> facts) {

    private static final String INDENT = "    ";

    /** What a request has left in the record: one line, or several of the kind. */
    record Left(String deed, List<Changed> changes, boolean several) {}

    /** A value that has been changed; a hyphen stands for none. */
    record Changed(String field, String from, String to) {}

    static List<Stanza> all() {
        List<Stanza> stanzas = new ArrayList<>();
        for (String line : lines()) {
            if (line.startsWith(INDENT)) {
                String[] fact = line.strip().split(" +", 2);
                stanzas.get(stanzas.size() - 1).facts.put(fact[0], fact.length == 1 ? "" : fact[1]);
            } else {
                stanzas.add(new Stanza(line.strip(), new LinkedHashMap<>()));
            }
        }
        return stanzas;
    }

    private static List<String> lines() {
        try (InputStream file = Objects.requireNonNull(Stanza.class.getResourceAsStream("/every-route.txt"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Method and pattern. */
    String route() {
        return asked.replaceFirst("\\?.*", "");
    }

    /** Pattern and question. */
    String address() {
        return asked.substring(asked.indexOf(' ') + 1);
    }

    boolean reads() {
        return asked.startsWith("GET ");
    }

    Optional<String> after() {
        return Optional.ofNullable(facts.get("after"));
    }

    Map<String, String> headers() {
        return facts.containsKey("match") ? Map.of("If-Match", facts.get("match")) : Map.of();
    }

    String body() {
        return facts.getOrDefault("sends", "").replace("\\n", "\n");
    }

    /** What is answered to everybody in their order, where things are somebody else's or one's own; empty if nothing is said. */
    List<String> outcomes(boolean own) {
        @Nullable String words = facts.get(own ? "own" : "others");
        return words == null ? List.of() : Arrays.asList(words.split(" +"));
    }

    /** The line in the record; empty where there is none, for reading or for a reason that is given. */
    Optional<Left> left() {
        boolean several = facts.containsKey("each");
        @Nullable String words = facts.get(several ? "each" : "leaves");
        if (words == null || words.startsWith("nothing: ")) {
            return Optional.empty();
        }
        List<String> parts = Arrays.asList(words.split("; "));
        return Optional.of(new Left(
                parts.get(0),
                parts.subList(1, parts.size()).stream().map(Stanza::changed).toList(),
                several));
    }

    private static Changed changed(String words) {
        String[] parts = words.split(": | > ");
        return new Changed(parts[0], parts[1], parts[2]);
    }
}
