package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;

/** Where a person makes and revokes their tokens. */
@Controller
@RequestMapping("/account/tokens")
class TokenPage {

    private static final NewToken EMPTY = new NewToken("", "read", TokenService.USUAL_DAYS);

    private final TokenService tokenService;
    private final TokenWords words;

    TokenPage(TokenService tokenService, TokenWords words) {
        this.tokenService = tokenService;
        this.words = words;
    }

    @GetMapping("/new")
    String showNew(Model model) {
        return newForm(EMPTY, FieldErrors.none(), model);
    }

    /** Shows the secret in the answer itself, so that it is kept nowhere, not even in the session until the next page. */
    @PostMapping
    String issue(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute NewToken form,
            Model model,
            HttpServletResponse response) {
        try {
            model.addAttribute("issued", tokenService.issue(who, form));
            return "account/token-issued";
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return newForm(form, FieldErrors.of(refusal, "name"), model);
        }
    }

    @PostMapping("/{id}/revoke")
    String revoke(@AuthenticationPrincipal SignedIn who, @PathVariable long id, RedirectAttributes redirect) {
        tokenService.revoke(who, id);
        redirect.addFlashAttribute("notice", "account.token.revoked");
        return "redirect:/account";
    }

    private String newForm(NewToken form, FieldErrors errors, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        model.addAttribute("scopes", words.scopes());
        model.addAttribute("lives", words.lives());
        return "account/token-new";
    }
}
