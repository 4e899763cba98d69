package studio.stancebook.account.internal;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Settings {@code stancebook.passwords.*}.
 *
 * @param bcryptStrength the cost of hashing a password, as a power of two, 4 to 31
 */
@ConfigurationProperties("stancebook.passwords")
record PasswordSettings(@DefaultValue("12") int bcryptStrength) {

    PasswordSettings {
        if (bcryptStrength < 4 || bcryptStrength > 31) {
            throw new IllegalArgumentException(
                    "stancebook.passwords.bcrypt-strength takes a whole number from 4 to 31, not " + bcryptStrength
                            + ".");
        }
    }
}
