package studio.stancebook.account.internal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a token may do of what its owner may. */
public enum TokenScope {
    /** Read, and calculate what is stored nowhere. */
    READ,
    /** Everything. */
    WRITE;

    static Optional<TokenScope> ofKey(String key) {
        return Arrays.stream(values()).filter(scope -> scope.key().equals(key)).findFirst();
    }

    static String keys() {
        return Arrays.stream(values()).map(TokenScope::key).collect(Collectors.joining(", "));
    }

    /** The name in JSON and in forms. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The name of the authority that Spring Security knows the scope by. */
    public String authority() {
        return "SCOPE_" + key();
    }
}
