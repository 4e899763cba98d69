package studio.stancebook.account.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Role;

/** What the roles are called on pages. */
@Component
class RoleWords {

    private final MessageSource messages;

    RoleWords(MessageSource messages) {
        this.messages = messages;
    }

    /** The words for each key, in the order of the roles. */
    Map<String, String> byKey() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Role role : Role.values()) {
            words.put(
                    role.key(),
                    messages.getMessage("account.role." + role.key(), null, LocaleContextHolder.getLocale()));
        }
        return words;
    }
}
