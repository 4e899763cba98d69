package studio.stancebook.operations.start;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what is needed of a JDBC URL. */
public final class DatabaseUrl {

    private static final String H2 = "jdbc:h2:";
    private static final String POSTGRESQL = "jdbc:postgresql:";

    /** H2 with a path: behind names of its file systems, such as {@code file:}; a drive letter of Windows allowed. */
    private static final Pattern H2_FILE =
            Pattern.compile("jdbc:h2:((?:[A-Za-z]{2,}:)*)((?:[A-Za-z]:)?[^:;]+)(?:;.*)?");

    /** Those that are no files on a disk of this machine. */
    private static final Pattern NO_DISK = Pattern.compile("(?i).*(mem|memfs|memlzf|tcp|ssl|zip|classpath):.*");

    private static final Pattern SECRET = Pattern.compile("(?i)(password=)[^&;]*|(//[^/@:]*:)[^/@]*@");

    private DatabaseUrl() {}

    static boolean isOfKnownKind(String url) {
        return url.startsWith(H2) || url.startsWith(POSTGRESQL);
    }

    /** The file in which H2 keeps the database; empty if it is no plain file. */
    public static Optional<Path> file(String url) {
        Matcher matcher = H2_FILE.matcher(url);
        if (!matcher.matches() || NO_DISK.matcher(matcher.group(1)).matches()) {
            return Optional.empty();
        }
        String home = Matcher.quoteReplacement(System.getProperty("user.home"));
        String path = matcher.group(2).replaceFirst("^~(?=/)", home);
        return Optional.of(Path.of(path + ".mv.db").toAbsolutePath().normalize());
    }

    /** The URL as it may be shown. */
    static String withoutSecrets(String url) {
        return SECRET.matcher(url).replaceAll(match -> {
            String kept = match.group(1) != null ? match.group(1) : match.group(2);
            return Matcher.quoteReplacement(kept + "…" + (match.group(1) == null ? "@" : ""));
        });
    }
}
