package studio.stancebook.account.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Browser and system in the words people know, from the User-Agent header (RFC 9110, section 10.1.5), which each may send
 * as they like: good enough to tell one's own machines apart, and nothing is decided by it.
 */
final class UserAgent {

    /** The first that occurs counts: most browsers also name those they descend from. */
    private static final Map<String, String> BROWSERS = inOrder(
            "Edg",
            "Edge",
            "OPR/",
            "Opera",
            "Firefox/",
            "Firefox",
            "FxiOS/",
            "Firefox",
            "Chrome/",
            "Chrome",
            "CriOS/",
            "Chrome",
            "Safari/",
            "Safari");

    private static final Map<String, String> SYSTEMS = inOrder(
            "Windows",
            "Windows",
            "iPhone",
            "iPhone",
            "iPad",
            "iPad",
            "Mac OS X",
            "macOS",
            "Android",
            "Android",
            "CrOS",
            "ChromeOS",
            "Linux",
            "Linux");

    private UserAgent() {}

    /** Such as {@code Firefox, Linux}; empty if neither is known. */
    static String words(@Nullable String userAgent) {
        String sent = userAgent == null ? "" : userAgent;
        return Stream.of(first(BROWSERS, sent), first(SYSTEMS, sent))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String first(Map<String, String> words, String sent) {
        return words.entrySet().stream()
                .filter(word -> sent.contains(word.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }

    private static Map<String, String> inOrder(String... marksAndWords) {
        Map<String, String> words = new LinkedHashMap<>();
        for (int i = 0; i < marksAndWords.length; i += 2) {
            words.put(marksAndWords[i], marksAndWords[i + 1]);
        }
        return words;
    }
}
