package studio.stancebook.account.internal;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/** Settings {@code stancebook.admin.*}: the first lead of a studio that has nobody yet; both or neither. */
@ConfigurationProperties("stancebook.admin")
record AdminSettings(@Nullable String email, @Nullable String password) {

    boolean given() {
        return isText(email) || isText(password);
    }

    boolean whole() {
        return isText(email) && isText(password);
    }

    private static boolean isText(@Nullable String value) {
        return value != null && !value.isBlank();
    }

    /** Leaves out the password. */
    @Override
    public String toString() {
        return "AdminSettings[" + email + "]";
    }
}
