package studio.stancebook.account.web;

import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** Leads to what concerns the studio as a whole. */
@Controller
class StudioPage {

    @GetMapping("/studio")
    String show(@AuthenticationPrincipal SignedIn who, Model model) {
        model.addAttribute("lead", who.role() == Role.LEAD);
        return "account/studio";
    }
}
