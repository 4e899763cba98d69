package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.web.WebAttributes;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.passkey.PasskeyCeremonies;
import studio.stancebook.account.passkey.PasskeyRefused;
import studio.stancebook.account.passkey.RelyingParty;
import studio.stancebook.account.security.TooManyAttempts;

/** Where people sign in. */
@Controller
class SignInPage {

    private static final String VIEW = "account/sign-in";

    private final PasskeyCeremonies passkeys;
    private final RelyingParty party;

    SignInPage(PasskeyCeremonies passkeys, RelyingParty party) {
        this.passkeys = passkeys;
        this.party = party;
    }

    @ModelAttribute("party")
    RelyingParty party() {
        return party;
    }

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

    /** What the browser's script needs to ask for a passkey, which it then posts to {@code /sign-in/passkey}. */
    @PostMapping(path = "/sign-in/passkey/options", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    String passkeyOptions(HttpServletRequest request, HttpServletResponse response) {
        return passkeys.ask(request, response);
    }

    /** Forwarded to by the filters that found address and password, or a passkey, wanting; the address typed is kept. */
    @PostMapping("/sign-in/refused")
    String refused(
            @RequestParam(name = "email", defaultValue = "") String email,
            @RequestAttribute(name = WebAttributes.AUTHENTICATION_EXCEPTION, required = false) @Nullable Exception why,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpStatus.FORBIDDEN.value());
        if (why instanceof TooManyAttempts tooMany) {
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            tooMany.refusal().retryAfter().ifPresent(seconds -> response.setHeader(HttpHeaders.RETRY_AFTER, seconds));
        }
        model.addAttribute("email", email.length() > PersonService.LONGEST_EMAIL ? "" : email);
        model.addAttribute("refusal", words(why));
        return VIEW;
    }

    private static String words(@Nullable Exception why) {
        if (why instanceof TooManyAttempts) {
            return "account.sign-in.too-many";
        }
        return why instanceof PasskeyRefused ? "account.passkeys.refused" : "account.sign-in.refused";
    }
}
