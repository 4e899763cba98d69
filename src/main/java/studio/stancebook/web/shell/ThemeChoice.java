package studio.stancebook.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.problem.Malformed;

/** Keeps the theme somebody chose. */
@Controller
class ThemeChoice {

    private static final String NAME = "theme";

    @PostMapping("/theme")
    ResponseEntity<Void> choose(
            @RequestParam("theme") String theme,
            @RequestParam(name = "back", defaultValue = "/") String back,
            HttpServletRequest request) {
        Theme chosen = Theme.ofKey(theme)
                .orElseThrow(() -> Malformed.ofField(
                        "theme", "\"" + theme + "\" is not a theme: accepted are " + Theme.keys() + "."));
        return Preference.keep(NAME, chosen == Theme.SYSTEM ? "" : chosen.key(), request, back);
    }

    /** That of a request; the system's where it carries none, or none that there is. */
    static Theme of(HttpServletRequest request) {
        return Preference.chosen(NAME, request).flatMap(Theme::ofKey).orElse(Theme.SYSTEM);
    }
}
