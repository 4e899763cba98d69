package studio.stancebook.account.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.account.internal.TokenScope;
import studio.stancebook.account.internal.TokenService;

/** What a token's scopes and lives are called on pages. */
@Component
class TokenWords {

    private static final int[] DAYS = {7, 30, TokenService.USUAL_DAYS, 180, TokenService.MAX_DAYS};

    private final MessageSource messages;

    TokenWords(MessageSource messages) {
        this.messages = messages;
    }

    /** The words for each key, the safest first. */
    Map<String, String> scopes() {
        Map<String, String> words = new LinkedHashMap<>();
        for (TokenScope scope : TokenScope.values()) {
            words.put(scope.key(), word("account.token.scope." + scope.key()));
        }
        return words;
    }

    /** Words for some of the numbers of days after which a token may end. */
    Map<Integer, String> lives() {
        Map<Integer, String> words = new LinkedHashMap<>();
        for (int days : DAYS) {
            words.put(days, word("account.token.life", days));
        }
        return words;
    }

    private String word(String key, Object... places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
