package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PasskeyService;
import studio.stancebook.account.passkey.RelyingParty;
import studio.stancebook.account.security.Confirmation;
import studio.stancebook.account.security.TooManyAttempts;
import studio.stancebook.edge.OwnAddress;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.TooMany;

/** Where somebody who is signed in gives a proof anew, before what takes a fresh one. */
@Controller
@RequestMapping("/account/confirm")
class ConfirmPage {

    private static final String ACCOUNT = "/account";
    private static final String PASSWORD = "password";

    private final Confirmation confirmation;
    private final PasskeyService passkeys;
    private final RelyingParty party;

    ConfirmPage(Confirmation confirmation, PasskeyService passkeys, RelyingParty party) {
        this.confirmation = confirmation;
        this.passkeys = passkeys;
        this.party = party;
    }

    @GetMapping
    String show(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "back", defaultValue = ACCOUNT) String back,
            Model model) {
        return form(who, back, FieldErrors.none(), model);
    }

    /** Takes a password, or what the browser's script posts as {@code credential} for a passkey. */
    @PostMapping
    String confirm(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = PASSWORD, required = false) @Nullable String password,
            @RequestParam(name = "credential", required = false) @Nullable String credential,
            @RequestParam(name = "back", defaultValue = ACCOUNT) String back,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        try {
            if (credential == null) {
                confirmation.byPassword(who, password, request, response);
            } else {
                confirmation.byPasskey(who, request, response);
            }
            return "redirect:" + OwnAddress.of(back);
        } catch (Impossible | TooMany refusal) {
            return refused(who, back, refusal, model, response);
        } catch (TooManyAttempts tooMany) {
            return refused(who, back, tooMany.refusal(), model, response);
        } catch (AuthenticationException notAccepted) {
            Impossible refusal = Impossible.ofField(PASSWORD, "This passkey was not accepted.");
            return refused(who, back, refusal, model, response);
        }
    }

    private String refused(SignedIn who, String back, Refusal refusal, Model model, HttpServletResponse response) {
        response.setStatus(refusal.type().status());
        return form(who, back, FieldErrors.of(refusal, PASSWORD), model);
    }

    private String form(SignedIn who, String back, FieldErrors errors, Model model) {
        model.addAttribute("back", OwnAddress.of(back));
        model.addAttribute("party", passkeys.list(who).isEmpty() ? null : party);
        model.addAttribute("errors", errors);
        return "account/confirm";
    }
}
