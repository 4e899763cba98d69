package studio.stancebook.account.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.stereotype.Component;

/**
 * What a new password must be: what {@link PasswordRules} say, not a common one, and more than words that anybody would try
 * here.
 *
 * <p>Source: OWASP ASVS 5.0, 6.2.4 (common passwords) and 6.2.11 (words of the context). The list is described in
 * {@code passwords/SOURCE.md}; which words and how much more than them is decision 0071.
 */
@Component
class PasswordPolicy {

    /** What must be left of a password without those words, in letters and digits. Our choice. */
    static final int OTHER_CHARACTERS = 8;

    private static final String PRODUCT = "stancebook";
    private static final int SHORTEST_WORD = 4;
    private static final Pattern NEITHER_LETTER_NOR_DIGIT = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Resource COMMON = new ClassPathResource("passwords/common.txt");

    private final String studioName;

    PasswordPolicy(@Value("${stancebook.studio-name:}") String studioName) {
        this.studioName = studioName;
    }

    /** What is wrong with a new password of a person, without repeating it; empty if nothing is. */
    Optional<String> objection(@Nullable String password, String displayName, String email) {
        Optional<String> objection = PasswordRules.objection(password);
        if (objection.isPresent() || password == null) {
            return objection;
        }
        if (isCommon(password)) {
            return Optional.of(
                    "This password is one of the most common ones, which are tried first. Choose another, such as"
                            + " four words that have nothing to do with each other.");
        }
        if (isMadeOf(password, Stream.of(displayName, email, studioName, PRODUCT))) {
            return Optional.of("This password is little more than a name that is known here: of the person, the e-mail"
                    + " address, the studio or the program. Choose another, such as four words that have nothing to do with"
                    + " each other.");
        }
        return Optional.empty();
    }

    /** Passwords are chosen seldom, so the list is read each time rather than kept. */
    private static boolean isCommon(String password) {
        String wanted = password.toLowerCase(Locale.ROOT);
        try (BufferedReader list =
                new BufferedReader(new InputStreamReader(COMMON.getInputStream(), StandardCharsets.US_ASCII))) {
            return list.lines().anyMatch(wanted::equals);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isMadeOf(String password, Stream<String> names) {
        String all = joined(password);
        String rest = all;
        for (String word : words(names)) {
            rest = rest.replace(word, "");
        }
        return rest.length() < all.length() && rest.length() < OTHER_CHARACTERS;
    }

    /** The words of names, the longest first, so that none hides a part of another. */
    private static List<String> words(Stream<String> names) {
        return names.flatMap(name -> Stream.concat(
                        Stream.of(joined(name)), Arrays.stream(NEITHER_LETTER_NOR_DIGIT.split(lower(name)))))
                .filter(word -> word.length() >= SHORTEST_WORD)
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    private static String joined(String text) {
        return NEITHER_LETTER_NOR_DIGIT.matcher(lower(text)).replaceAll("");
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
