package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.WebAttributes;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.account.security.TooManyAttempts;

/** Where people sign in. */
@Controller
class SignInPage {

    private static final String VIEW = "account/sign-in";

    @GetMapping("/sign-in")
    String show(
            @AuthenticationPrincipal @Nullable SignedIn who,
            @RequestParam(name = "left", required = false) @Nullable String left,
            Model model) {
        if (who != null) {
            return "redirect:/";
        }
        model.addAttribute("email", "");
        model.addAttribute("left", left != null);
        return VIEW;
    }

    /** Forwarded to by the filter that found address and password wanting; the address typed is kept. */
    @PostMapping("/sign-in/refused")
    String refused(
            @RequestParam(name = "email", defaultValue = "") String email,
            @RequestAttribute(name = WebAttributes.AUTHENTICATION_EXCEPTION, required = false) @Nullable Exception why,
            HttpServletResponse response,
            Model model) {
        if (why instanceof TooManyAttempts tooMany) {
            tooMany.refusal().retryAfter().ifPresent(seconds -> response.setHeader(HttpHeaders.RETRY_AFTER, seconds));
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            model.addAttribute("refusal", "account.sign-in.too-many");
        } else {
            response.setStatus(HttpStatus.FORBIDDEN.value());
            model.addAttribute("refusal", "account.sign-in.refused");
        }
        model.addAttribute("email", email.length() > Staff.LONGEST_EMAIL ? "" : email);
        return VIEW;
    }
}
