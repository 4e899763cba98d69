package studio.stancebook.operations.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.ReadOnlyFileSystemException;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What keeps the store from serving, told from the exception that came of it.
 *
 * <p>Sources: H2's error codes ({@code org.h2.api.ErrorCode} and {@code org.h2.mvstore.DataUtils}), PostgreSQL's SQLSTATE
 * codes (its manual, appendix A), the messages of the operating system for errno ENOSPC, EDQUOT, EFBIG, EACCES, EROFS.
 */
public enum StoreTrouble {
    OPEN_ELSEWHERE,
    NO_ROOM,
    NOT_WRITABLE,
    DAMAGED,
    OTHER_VERSION,
    WRONG_LOGIN,
    NO_SUCH_DATABASE,
    UNREACHABLE;

    private static final Map<Integer, StoreTrouble> BY_H2_CODE = Map.ofEntries(
            Map.entry(90020, OPEN_ELSEWHERE),
            Map.entry(90100, NO_ROOM),
            Map.entry(90097, NOT_WRITABLE),
            Map.entry(90030, DAMAGED),
            Map.entry(90048, OTHER_VERSION),
            Map.entry(28000, WRONG_LOGIN),
            Map.entry(90013, NO_SUCH_DATABASE),
            Map.entry(90146, NO_SUCH_DATABASE),
            Map.entry(90028, UNREACHABLE),
            Map.entry(90031, UNREACHABLE),
            Map.entry(90067, UNREACHABLE),
            Map.entry(90098, UNREACHABLE),
            Map.entry(90121, UNREACHABLE));

    private static final Map<String, StoreTrouble> BY_SQL_STATE = Map.ofEntries(
            Map.entry("53100", NO_ROOM),
            Map.entry("25006", NOT_WRITABLE),
            Map.entry("XX001", DAMAGED),
            Map.entry("XX002", DAMAGED),
            Map.entry("28000", WRONG_LOGIN),
            Map.entry("28P01", WRONG_LOGIN),
            Map.entry("3D000", NO_SUCH_DATABASE),
            Map.entry("53300", UNREACHABLE),
            Map.entry("57P01", UNREACHABLE),
            Map.entry("57P02", UNREACHABLE),
            Map.entry("57P03", UNREACHABLE),
            Map.entry("58030", UNREACHABLE));

    /** What the pool says of a connection that it took back under whoever used it; there is no code for it. */
    private static final String TAKEN_BACK = "Connection is closed";

    /** The class of SQLSTATE for a connection that cannot be made or broke. */
    private static final String NO_CONNECTION = "08";

    private static final Map<Integer, StoreTrouble> BY_FILE_CODE =
            Map.of(2, NOT_WRITABLE, 5, OTHER_VERSION, 6, DAMAGED, 7, OPEN_ELSEWHERE);

    /** Causes looked at, in case they go round in a circle. */
    private static final int DEEPEST = 50;

    /** How the messages of H2's file layer end: version and code, such as {@code [2.4.240/6]}. */
    private static final Pattern FILE_CODE = Pattern.compile("\\[[0-9.]+/(\\d+)]$");

    private static final Pattern OF_NO_ROOM =
            Pattern.compile("no space left|quota exceeded|file too large|not enough space|disk full");
    private static final Pattern OF_NO_RIGHT =
            Pattern.compile("permission denied|read-only file system|access is denied");

    /**
     * The trouble behind an exception, if it is one of the store. What lies deepest says most: a failed write is told as
     * missing room if that is why it failed.
     */
    public static Optional<StoreTrouble> of(@Nullable Throwable exception) {
        Optional<StoreTrouble> found = Optional.empty();
        Throwable cause = exception;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            Optional<StoreTrouble> earlier = found;
            found = told(cause).or(() -> earlier);
            cause = cause.getCause();
        }
        return found;
    }

    private static Optional<StoreTrouble> told(Throwable exception) {
        if (exception instanceof SQLException sql) {
            return ofSql(sql);
        }
        if (exception instanceof AccessDeniedException || exception instanceof ReadOnlyFileSystemException) {
            return Optional.of(NOT_WRITABLE);
        }
        if (exception instanceof IOException) {
            return ofMessage(String.valueOf(exception.getMessage()));
        }
        return isOfFileLayer(exception) ? ofFileCode(String.valueOf(exception.getMessage())) : Optional.empty();
    }

    private static Optional<StoreTrouble> ofSql(SQLException exception) {
        StoreTrouble byCode = BY_H2_CODE.get(exception.getErrorCode());
        if (byCode != null) {
            return Optional.of(byCode);
        }
        String state = String.valueOf(exception.getSQLState());
        if (state.startsWith(NO_CONNECTION)
                || exception instanceof java.sql.SQLTransientConnectionException
                || TAKEN_BACK.equals(exception.getMessage())) {
            return Optional.of(UNREACHABLE);
        }
        return Optional.ofNullable(BY_SQL_STATE.get(state));
    }

    private static boolean isOfFileLayer(Throwable exception) {
        return exception.getClass().getName().startsWith("org.h2.mvstore");
    }

    private static Optional<StoreTrouble> ofFileCode(String message) {
        Matcher code = FILE_CODE.matcher(message);
        return code.find() ? Optional.ofNullable(BY_FILE_CODE.get(Integer.valueOf(code.group(1)))) : Optional.empty();
    }

    private static Optional<StoreTrouble> ofMessage(String message) {
        String words = message.toLowerCase(Locale.ROOT);
        if (OF_NO_ROOM.matcher(words).find()) {
            return Optional.of(NO_ROOM);
        }
        return OF_NO_RIGHT.matcher(words).find() ? Optional.of(NOT_WRITABLE) : Optional.empty();
    }
}
