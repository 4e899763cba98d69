package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.core.authority.FactorGrantedAuthority;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.PasskeyService;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.account.security.CurrentPassword;
import studio.stancebook.account.security.SecurityHeaders;
import studio.stancebook.account.security.SignInRenewal;
import studio.stancebook.account.session.SignIns;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.TooMany;

/** A person's own account: where they are signed in, password, passkeys and tokens. */
@Controller
@RequestMapping("/account")
class AccountPage {

    private static final String HERE = "redirect:/account";
    private static final String VIEW = "account/account";
    private static final String CHOOSE_PASSWORD = "account/choose-password";

    private final PersonService people;
    private final TokenService tokenService;
    private final CurrentPassword currentPassword;
    private final SignInRenewal renewal;
    private final RoleWords roles;
    private final SignIns signIns;
    private final PasskeyService passkeys;
    private final Clock clock;

    AccountPage(
            PersonService people,
            TokenService tokenService,
            CurrentPassword currentPassword,
            SignInRenewal renewal,
            RoleWords roles,
            SignIns signIns,
            PasskeyService passkeys,
            Clock clock) {
        this.people = people;
        this.tokenService = tokenService;
        this.currentPassword = currentPassword;
        this.renewal = renewal;
        this.roles = roles;
        this.signIns = signIns;
        this.passkeys = passkeys;
        this.clock = clock;
    }

    @GetMapping
    String show(@AuthenticationPrincipal SignedIn who, Model model, HttpServletRequest request) {
        return page(who, FieldErrors.none(), model, request);
    }

    /** For whoever has to choose a password; others change theirs on the page of their account. */
    @GetMapping("/password")
    String choosePassword(@AuthenticationPrincipal SignedIn who, Model model) {
        if (!people.isPasswordChangeDue(who.personId())) {
            return HERE;
        }
        model.addAttribute("errors", FieldErrors.none());
        return CHOOSE_PASSWORD;
    }

    @PostMapping("/password")
    String changePassword(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "currentPassword", required = false) @Nullable String current,
            @RequestParam(name = "newPassword", required = false) @Nullable String wanted,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        boolean due = people.isPasswordChangeDue(who.personId());
        try {
            currentPassword.check(who, "currentPassword", current, request.getRemoteAddr());
            Credentials now = people.changeOwnPassword(who, wanted);
            renewal.renew(now.signedIn(), FactorGrantedAuthority.PASSWORD_AUTHORITY, request, response);
        } catch (Impossible | TooMany refusal) {
            response.setStatus(refusal.type().status());
            if (refusal instanceof TooMany tooMany) {
                tooMany.retryAfter().ifPresent(seconds -> response.setHeader(HttpHeaders.RETRY_AFTER, seconds));
            }
            page(who, FieldErrors.of(refusal, "currentPassword"), model, request);
            return due ? CHOOSE_PASSWORD : VIEW;
        }
        redirect.addFlashAttribute("notice", "account.password.changed");
        return due ? "redirect:/" : HERE;
    }

    /** Signs the person out at another place. */
    @PostMapping("/sign-ins/{key}/end")
    String endSignIn(@AuthenticationPrincipal SignedIn who, @PathVariable String key, RedirectAttributes redirect) {
        signIns.end(who.personId(), key);
        redirect.addFlashAttribute("notice", "account.sign-ins.ended");
        return HERE;
    }

    /** Signs the person out everywhere, here too. */
    @PostMapping("/sign-ins/end")
    String endAllSignIns(
            @AuthenticationPrincipal SignedIn who, HttpServletRequest request, HttpServletResponse response) {
        signIns.endAll(who.personId());
        request.getSession().invalidate();
        SecurityHeaders.AT_SIGN_OUT.writeHeaders(request, response);
        return "redirect:/sign-in?left";
    }

    private String page(SignedIn who, FieldErrors errors, Model model, HttpServletRequest request) {
        model.addAttribute(
                "signIns",
                signIns.of(who.personId(), request.getSession(false)).stream()
                        .map(SignInLine::of)
                        .toList());
        model.addAttribute(
                "passkeys", passkeys.list(who).stream().map(PasskeyLine::of).toList());
        model.addAttribute("who", who);
        model.addAttribute("role", roles.byKey().get(who.role().key()));
        Instant now = clock.instant();
        model.addAttribute(
                "tokens",
                tokenService.list(who).stream()
                        .map(token -> TokenLine.of(token, now))
                        .toList());
        model.addAttribute("errors", errors);
        return VIEW;
    }
}
