package studio.stancebook.account.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Leads to what concerns the studio as a whole. */
@Controller
class StudioPage {

    @GetMapping("/studio")
    String show() {
        return "account/studio";
    }
}
