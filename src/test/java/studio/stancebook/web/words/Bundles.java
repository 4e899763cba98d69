package studio.stancebook.web.words;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The message bundles, and where their keys are spoken of. */
final class Bundles {

    static final Path FOLDER = Path.of("src/main/resources/messages");

    private static final String KEY = "[a-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9_-]+)+";

    /** {@code #{...}} with the key written out. */
    private static final Pattern LITERAL = Pattern.compile("#\\{(" + KEY + ")[}(]");

    /** Anything that looks like a key, in Java or in a template. */
    private static final Pattern MENTION = Pattern.compile("(?<![A-Za-z0-9.-])" + KEY);

    /** The beginning of a key that is put together: {@code 'measure.' +}, {@code |web.verdict.${}. */
    private static final Pattern BEGINNING =
            Pattern.compile("[\"'|]([a-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9_-]+)*\\.)(?=[\"'$%])");

    private static final Path JAVA = Path.of("src/main/java");

    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->", Pattern.DOTALL);

    private Bundles() {}

    /** Keys by the file that has them, without the ending. */
    static Map<String, Set<String>> keysByFile() {
        Map<String, Set<String>> keys = new TreeMap<>();
        for (Path path : files(FOLDER, ".properties")) {
            Properties properties = new Properties();
            try (Reader reader = Files.newBufferedReader(path)) {
                properties.load(reader);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            keys.put(
                    path.getFileName().toString().replace(".properties", ""),
                    new TreeSet<>(properties.stringPropertyNames()));
        }
        return keys;
    }

    static Set<String> keys() {
        return keysByFile().values().stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The keys that templates write out. */
    static Set<String> literalKeysOfTemplates() {
        return found(LITERAL, templates());
    }

    /**
     * The keys nothing speaks of: neither written out, nor begun where keys are put together, nor ending in a word that the
     * module's own code has as a literal, such as the keys of an enum.
     */
    static Set<String> unused() {
        String all = templates() + text(JAVA, ".java");
        Set<String> mentions = found(MENTION, all);
        Set<String> beginnings = found(BEGINNING, all);
        Set<String> unused = keys();
        unused.removeIf(key ->
                mentions.contains(key) || beginnings.stream().anyMatch(key::startsWith) || endsInLiteralOfModule(key));
        return unused;
    }

    private static boolean endsInLiteralOfModule(String key) {
        Path module = JAVA.resolve("studio/stancebook").resolve(key.substring(0, key.indexOf('.')));
        String ending = key.substring(key.lastIndexOf('.') + 1);
        return Files.isDirectory(module) && text(module, ".java").contains("\"" + ending + "\"");
    }

    private static String templates() {
        return COMMENT.matcher(text(Template.FOLDER, ".html")).replaceAll("");
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(one -> one.groupCount() == 0 ? one.group() : one.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(Path folder, String ending) {
        return files(folder, ending).stream().map(Template::read).collect(Collectors.joining("\n"));
    }

    private static Set<Path> files(Path folder, String ending) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(path -> path.toString().endsWith(ending))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
