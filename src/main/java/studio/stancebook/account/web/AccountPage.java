package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.PasskeyDesk;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.account.passkey.PasskeyCeremonies;
import studio.stancebook.account.passkey.RelyingParty;
import studio.stancebook.account.security.CurrentPassword;
import studio.stancebook.account.security.Renewal;
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

    private final Staff staff;
    private final TokenDesk desk;
    private final CurrentPassword currentPassword;
    private final Renewal renewal;
    private final RoleWords roles;
    private final SignIns signIns;
    private final PasskeyDesk passkeys;
    private final PasskeyCeremonies ceremonies;
    private final RelyingParty party;

    AccountPage(
            Staff staff,
            TokenDesk desk,
            CurrentPassword currentPassword,
            Renewal renewal,
            RoleWords roles,
            SignIns signIns,
            PasskeyDesk passkeys,
            PasskeyCeremonies ceremonies,
            RelyingParty party) {
        this.staff = staff;
        this.desk = desk;
        this.currentPassword = currentPassword;
        this.renewal = renewal;
        this.roles = roles;
        this.signIns = signIns;
        this.passkeys = passkeys;
        this.ceremonies = ceremonies;
        this.party = party;
    }

    @GetMapping
    String show(@AuthenticationPrincipal SignedIn who, Model model, HttpServletRequest request) {
        return page(who, "", FieldErrors.none(), model, request);
    }

    /** For whoever has to choose a password; others change theirs on the page of their account. */
    @GetMapping("/password")
    String choosePassword(@AuthenticationPrincipal SignedIn who, Model model) {
        if (!staff.isPasswordChangeDue(who.personId())) {
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
        boolean due = staff.isPasswordChangeDue(who.personId());
        try {
            currentPassword.check(who, "currentPassword", current, request.getRemoteAddr());
            Credentials now = staff.changeOwnPassword(who, wanted);
            renewal.renew(now.signedIn(), request, response);
        } catch (Impossible | TooMany refusal) {
            response.setStatus(refusal.type().status());
            if (refusal instanceof TooMany tooMany) {
                tooMany.retryAfter().ifPresent(seconds -> response.setHeader(HttpHeaders.RETRY_AFTER, seconds));
            }
            page(who, "", FieldErrors.of(refusal, "currentPassword"), model, request);
            return due ? CHOOSE_PASSWORD : VIEW;
        }
        redirect.addFlashAttribute("notice", "account.password.changed");
        return due ? "redirect:/" : HERE;
    }

    /** Shows the secret in the answer itself, so that it is kept nowhere, not even in the session until the next page. */
    @PostMapping("/tokens")
    String issueToken(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "name", required = false) @Nullable String name,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        try {
            model.addAttribute("issued", desk.issue(who, name));
            return page(who, "", FieldErrors.none(), model, request);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return page(who, name, FieldErrors.of(refusal, "name"), model, request);
        }
    }

    @PostMapping("/tokens/{id}/revoke")
    String revokeToken(@AuthenticationPrincipal SignedIn who, @PathVariable long id, RedirectAttributes redirect) {
        desk.revoke(who, id);
        redirect.addFlashAttribute("notice", "account.token.revoked");
        return HERE;
    }

    /** What the browser's script needs to make a passkey, which it then posts as {@code credential}. */
    @PostMapping(path = "/passkeys/options", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    String passkeyOptions(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "label", required = false) @Nullable String label,
            HttpServletRequest request,
            HttpServletResponse response) {
        return ceremonies.begin(who, label, request, response);
    }

    @PostMapping("/passkeys")
    String addPasskey(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "label", required = false) @Nullable String label,
            @RequestParam(name = "credential", required = false) @Nullable String credential,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            ceremonies.finish(who, label, credential, request, response);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            model.addAttribute("passkeyLabel", label);
            return page(who, "", FieldErrors.of(refusal, "label"), model, request);
        }
        redirect.addFlashAttribute("notice", "account.passkeys.made");
        return HERE;
    }

    @PostMapping("/passkeys/{id}/remove")
    String removePasskey(@AuthenticationPrincipal SignedIn who, @PathVariable long id, RedirectAttributes redirect) {
        passkeys.remove(who, id);
        redirect.addFlashAttribute("notice", "account.passkeys.removed");
        return HERE;
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
    String endAllSignIns(@AuthenticationPrincipal SignedIn who) {
        signIns.endAll(who.personId());
        return "redirect:/sign-in?left";
    }

    private String page(
            SignedIn who, @Nullable String tokenName, FieldErrors errors, Model model, HttpServletRequest request) {
        model.addAttribute(
                "signIns",
                signIns.of(who.personId(), request.getSession(false)).stream()
                        .map(SignInLine::of)
                        .toList());
        model.addAttribute(
                "passkeys", passkeys.list(who).stream().map(PasskeyLine::of).toList());
        model.addAttribute("party", party);
        model.addAttribute("who", who);
        model.addAttribute("role", roles.byKey().get(who.role().key()));
        model.addAttribute("tokens", desk.list(who).stream().map(TokenLine::of).toList());
        model.addAttribute("tokenName", tokenName);
        model.addAttribute("errors", errors);
        return VIEW;
    }
}
