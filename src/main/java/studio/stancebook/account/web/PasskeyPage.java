package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
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
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PasskeyService;
import studio.stancebook.account.passkey.PasskeyCeremonies;
import studio.stancebook.account.passkey.RelyingParty;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;

/** Where a person makes and removes their passkeys. */
@Controller
@RequestMapping("/account/passkeys")
class PasskeyPage {

    private static final String HERE = "redirect:/account";

    private final PasskeyService passkeys;
    private final PasskeyCeremonies ceremonies;
    private final RelyingParty party;

    PasskeyPage(PasskeyService passkeys, PasskeyCeremonies ceremonies, RelyingParty party) {
        this.passkeys = passkeys;
        this.ceremonies = ceremonies;
        this.party = party;
    }

    @GetMapping("/new")
    String showNew(Model model) {
        return newForm(null, FieldErrors.none(), model);
    }

    /** What the browser's script needs to make a passkey, which it then posts as {@code credential}. */
    @PostMapping(path = "/options", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    String options(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "label", required = false) @Nullable String label,
            HttpServletRequest request,
            HttpServletResponse response) {
        return ceremonies.begin(who, label, request, response);
    }

    @PostMapping
    String add(
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
            return newForm(label, FieldErrors.of(refusal, "label"), model);
        }
        redirect.addFlashAttribute("notice", "account.passkeys.made");
        return HERE;
    }

    @PostMapping("/{id}/remove")
    String remove(@AuthenticationPrincipal SignedIn who, @PathVariable long id, RedirectAttributes redirect) {
        passkeys.remove(who, id);
        redirect.addFlashAttribute("notice", "account.passkeys.removed");
        return HERE;
    }

    private String newForm(@Nullable String label, FieldErrors errors, Model model) {
        model.addAttribute("label", label);
        model.addAttribute("errors", errors);
        model.addAttribute("party", party);
        return "account/passkey-new";
    }
}
