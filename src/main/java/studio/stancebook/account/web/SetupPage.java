package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.account.internal.FirstLead;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;

/** Where the first lead is made, by the link on the console. */
@Controller
@RequestMapping("/setup")
class SetupPage {

    private static final String VIEW = "account/setup";

    private final FirstLead firstLead;

    SetupPage(FirstLead firstLead) {
        this.firstLead = firstLead;
    }

    @GetMapping
    String show(@RequestParam(name = "key", required = false) @Nullable String key, Model model) {
        firstLead.check(key);
        return form(SetupForm.empty(key), FieldErrors.none(), model);
    }

    @PostMapping
    String make(
            @ModelAttribute SetupForm form, Model model, HttpServletResponse response, RedirectAttributes redirect) {
        try {
            firstLead.check(form.key());
            checkTypedTwice(form);
            firstLead.make(form.key(), form.email(), form.displayName(), form.password());
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return form(form, FieldErrors.of(refusal, "email"), model);
        }
        redirect.addFlashAttribute("notice", "account.setup.done");
        return "redirect:/sign-in";
    }

    private static void checkTypedTwice(SetupForm form) {
        if (!Objects.equals(form.password(), form.again())) {
            throw Impossible.ofField("again", "This is not the same password as above.");
        }
    }

    private static String form(SetupForm form, FieldErrors errors, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return VIEW;
    }
}
