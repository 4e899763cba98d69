package studio.stancebook.account.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Pageable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.session.SignIns;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.Stale;

/** The people of the studio, for leads. */
@Controller
@RequestMapping("/studio/people")
@RequiresPermission(Permission.MANAGE_PEOPLE)
class PeoplePage {

    private static final String LIST = "redirect:/studio/people";

    private final PersonService personService;
    private final RoleWords roles;
    private final SignIns signIns;

    PeoplePage(PersonService personService, RoleWords roles, SignIns signIns) {
        this.personService = personService;
        this.roles = roles;
        this.signIns = signIns;
    }

    @ModelAttribute("roles")
    Map<String, String> roles() {
        return roles.byKey();
    }

    @GetMapping
    String list(Pageable page, Model model) {
        model.addAttribute("people", personService.list(page));
        return "account/people";
    }

    @GetMapping("/new")
    String showNew(Model model) {
        return newForm(PersonForm.empty(), FieldErrors.none(), model);
    }

    @PostMapping
    String add(
            @ModelAttribute PersonForm form, Model model, HttpServletResponse response, RedirectAttributes redirect) {
        try {
            PersonEntry added = personService.add(form.asNew());
            return done("account.people.added", added, redirect);
        } catch (Impossible | Conflict refusal) {
            response.setStatus(refusal.type().status());
            return newForm(form, FieldErrors.of(refusal, "email"), model);
        }
    }

    @GetMapping("/{id}")
    String show(@PathVariable long id, Model model) {
        PersonEntry person = personService.get(id);
        return changeForm(person, PersonForm.of(person), FieldErrors.none(), model);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable long id,
            @ModelAttribute PersonForm form,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            PersonEntry changed = personService.change(id, form.expected(), form.asChange());
            String next = done("account.people.changed", changed, redirect);
            return id == who.personId() && !Permission.MANAGE_PEOPLE.isGrantedTo(changed.role()) ? "redirect:/" : next;
        } catch (Impossible | Conflict | Stale refusal) {
            return again(id, form, refusal, model, response);
        }
    }

    /** The form as it was typed; if the person was changed meanwhile, with what they are now beside it. */
    private String again(long id, PersonForm form, Refusal refusal, Model model, HttpServletResponse response) {
        response.setStatus(refusal.type().status());
        PersonEntry now = personService.get(id);
        if (refusal instanceof Stale) {
            model.addAttribute("now", now);
            return changeForm(now, form.atVersion(now), FieldErrors.none(), model);
        }
        return changeForm(now, form, FieldErrors.of(refusal, "displayName"), model);
    }

    @PostMapping("/{id}/password")
    String resetPassword(
            @PathVariable long id,
            @RequestParam(name = "password", required = false) @Nullable String password,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        PersonEntry person = personService.get(id);
        try {
            personService.resetPassword(id, password);
            return done("account.people.password-reset", person, redirect);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return changeForm(person, PersonForm.of(person), FieldErrors.of(refusal, "password"), model);
        }
    }

    @PostMapping("/{id}/sign-out")
    String signOut(@PathVariable long id, RedirectAttributes redirect) {
        PersonEntry person = personService.get(id);
        signIns.endAll(id);
        return done("account.people.signed-out", person, redirect);
    }

    private static String done(String notice, PersonEntry person, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("noticeWords", new Object[] {person.displayName()});
        return LIST;
    }

    private static String newForm(PersonForm form, FieldErrors errors, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return "account/person-new";
    }

    private static String changeForm(PersonEntry person, PersonForm form, FieldErrors errors, Model model) {
        model.addAttribute("person", person);
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return "account/person";
    }
}
