package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.account.security.Renewal;
import studio.stancebook.account.security.SecurityHeaders;
import studio.stancebook.account.session.SignIns;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;

/** A person's own account: where they are signed in, password and tokens. */
@Controller
@RequestMapping("/account")
class AccountPage {

    private static final String HERE = "redirect:/account";

    private final Staff staff;
    private final TokenDesk desk;
    private final Renewal renewal;
    private final RoleWords roles;
    private final SignIns signIns;
    private final Clock clock;

    AccountPage(Staff staff, TokenDesk desk, Renewal renewal, RoleWords roles, SignIns signIns, Clock clock) {
        this.staff = staff;
        this.desk = desk;
        this.renewal = renewal;
        this.roles = roles;
        this.signIns = signIns;
        this.clock = clock;
    }

    @GetMapping
    String show(@AuthenticationPrincipal SignedIn who, Model model, HttpServletRequest request) {
        return page(who, FieldErrors.none(), model, request);
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
        try {
            Credentials now = staff.changeOwnPassword(who, current, wanted);
            renewal.renew(now.signedIn(), request, response);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return page(who, FieldErrors.of(refusal, "newPassword"), model, request);
        }
        redirect.addFlashAttribute("notice", "account.password.changed");
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
        model.addAttribute("who", who);
        model.addAttribute("role", roles.byKey().get(who.role().key()));
        Instant now = clock.instant();
        model.addAttribute(
                "tokens",
                desk.list(who).stream().map(token -> TokenLine.of(token, now)).toList());
        model.addAttribute("errors", errors);
        return "account/account";
    }
}
