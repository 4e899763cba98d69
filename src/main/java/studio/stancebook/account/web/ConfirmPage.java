package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.security.Confirmation;
import studio.stancebook.account.security.OwnAddress;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Refusal;

/** Where somebody who is signed in gives a proof anew, before what takes a fresh one. */
@Controller
@RequestMapping("/account/confirm")
class ConfirmPage {

    private static final String ACCOUNT = "/account";

    private final Confirmation confirmation;

    ConfirmPage(Confirmation confirmation) {
        this.confirmation = confirmation;
    }

    @GetMapping
    String show(@RequestParam(name = "back", defaultValue = ACCOUNT) String back, Model model) {
        return form(back, FieldErrors.none(), model);
    }

    @PostMapping
    String confirm(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "password", defaultValue = "") String password,
            @RequestParam(name = "back", defaultValue = ACCOUNT) String back,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        try {
            confirmation.byPassword(who, password, request, response);
            return "redirect:" + OwnAddress.of(back);
        } catch (AuthenticationException refused) {
            Refusal refusal = refused.getCause() instanceof Refusal cause
                    ? cause
                    : Impossible.ofField("password", "This is not your password.");
            response.setStatus(refusal.type().status());
            return form(back, FieldErrors.of(refusal, "password"), model);
        }
    }

    private static String form(String back, FieldErrors errors, Model model) {
        model.addAttribute("back", OwnAddress.of(back));
        model.addAttribute("errors", errors);
        return "account/confirm";
    }
}
