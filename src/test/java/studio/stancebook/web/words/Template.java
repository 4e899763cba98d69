package studio.stancebook.web.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.attoparser.ParseException;
import org.attoparser.config.ParseConfiguration;
import org.attoparser.simple.AbstractSimpleMarkupHandler;
import org.attoparser.simple.SimpleMarkupParser;

/**
 * A template read for what it must not have in it.
 *
 * @param path where it is
 * @param faults what was found, each with its line
 */
record Template(Path path, List<String> faults) {

    static final Path FOLDER = Path.of("src/main/resources/templates");

    /** Attributes whose values a person reads or hears. */
    private static final Set<String> WORDS = Set.of("title", "alt", "placeholder", "aria-label", "aria-description");

    /** What is overlooked on an element that is replaced: it belongs on an element around it. */
    private static final Set<String> OVERLOOKED = Set.of("th:if", "th:unless", "th:each", "th:with");

    /** What alone is put into a page as it is: what a template has made before. */
    private static final String CACHED = "${fragment.markup()}";

    private static final Pattern LETTER = Pattern.compile("\\p{L}");
    private static final Pattern HANDLER = Pattern.compile("(th:)?on[a-z]+");

    static List<Template> all() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(path -> path.toString().endsWith(".html"))
                    .sorted()
                    .map(path -> of(path, read(path)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Template of(Path path, String text) {
        Reader reader = new Reader(path.endsWith("fragments/cached.html"));
        try {
            new SimpleMarkupParser(ParseConfiguration.htmlConfiguration()).parse(text, reader);
        } catch (ParseException e) {
            throw new IllegalStateException(path + " is no HTML", e);
        }
        return new Template(path, reader.faults);
    }

    static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Reader extends AbstractSimpleMarkupHandler {

        private final List<String> faults = new ArrayList<>();
        private final boolean printed;

        /** For each open element, whether what is in it is replaced when the page is drawn. */
        private final Deque<Boolean> replaced = new ArrayDeque<>();

        Reader(boolean printed) {
            this.printed = printed;
        }

        @Override
        public void handleOpenElement(String name, Map<String, String> attributes, int line, int col) {
            check(name, attributes, line);
            boolean here = attributes != null
                    && (attributes.containsKey("th:text")
                            || attributes.containsKey("th:replace")
                            || attributes.containsKey("th:insert"));
            replaced.push(here || Boolean.TRUE.equals(replaced.peek()));
        }

        @Override
        public void handleAutoOpenElement(String name, Map<String, String> attributes, int line, int col) {
            handleOpenElement(name, attributes, line, col);
        }

        @Override
        public void handleCloseElement(String name, int line, int col) {
            replaced.pop();
        }

        @Override
        public void handleAutoCloseElement(String name, int line, int col) {
            replaced.pop();
        }

        @Override
        public void handleStandaloneElement(
                String name, Map<String, String> attributes, boolean minimized, int line, int col) {
            check(name, attributes, line);
        }

        @Override
        public void handleText(char[] buffer, int offset, int length, int line, int col) {
            String text = new String(buffer, offset, length).strip();
            if (LETTER.matcher(text).find() && !Boolean.TRUE.equals(replaced.peek())) {
                faults.add("line " + line + ": loose text \"" + text + "\"");
            }
        }

        private void check(String name, Map<String, String> attributes, int line) {
            Map<String, String> given = attributes == null ? Map.of() : attributes;
            if (name.equals("style") || name.equals("script") && !given.containsKey("th:src")) {
                faults.add("line " + line + ": <" + name + "> within the page");
            }
            if (given.containsKey("th:replace") && OVERLOOKED.stream().anyMatch(given::containsKey)) {
                faults.add("line " + line + ": a condition or repetition beside th:replace, which comes first");
            }
            given.forEach((attribute, value) -> check(attribute, String.valueOf(value), line));
        }

        private void check(String attribute, String value, int line) {
            if (attribute.matches("(th:)?style(append)?|th:inline")
                    || attribute.equals("th:utext") && !(printed && value.equals(CACHED))
                    || HANDLER.matcher(attribute).matches()) {
                faults.add("line " + line + ": " + attribute);
            }
            if (WORDS.contains(attribute) && LETTER.matcher(value).find()) {
                faults.add("line " + line + ": loose words in " + attribute + "=\"" + value + "\"");
            }
            if (value.contains("javascript:") || value.contains("[(") || value.contains("://")) {
                faultUnlessNamespace(attribute, value, line);
            }
        }

        private void faultUnlessNamespace(String attribute, String value, int line) {
            if (!attribute.startsWith("xmlns")) {
                faults.add("line " + line + ": " + attribute + "=\"" + value + "\"");
            }
        }
    }
}
