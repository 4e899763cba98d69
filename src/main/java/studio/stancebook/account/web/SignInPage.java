package studio.stancebook.account.web;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import studio.stancebook.account.SignedIn;

/** Where people sign in. */
@Controller
class SignInPage {

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
        return "account/sign-in";
    }

    /** Forwarded to by the filter that found address and password wanting; the address typed is kept. */
    @PostMapping("/sign-in/refused")
    @ResponseStatus(HttpStatus.FORBIDDEN)
    String refused(@RequestParam(name = "email", defaultValue = "") String email, Model model) {
        model.addAttribute("email", email);
        model.addAttribute("refused", true);
        return "account/sign-in";
    }
}
