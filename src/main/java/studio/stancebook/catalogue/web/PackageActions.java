package studio.stancebook.catalogue.web;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.UnknownPackage;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.NotFound;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.Stale;

/** What one does with a package from its page: set it or a value of it aside, take back, answer queries. */
@Controller
@RequestMapping("/packages/{id}")
@RequiresPermission(Permission.RECORD_PACKAGES)
class PackageActions {

    private final Catalogue catalogue;

    PackageActions(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    @PostMapping("/set-aside")
    String setAside(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            @RequestParam(name = "reason", defaultValue = "") String reason,
            RedirectAttributes redirect) {
        return done(
                id,
                "catalogue.apart.done",
                reason,
                () -> catalogue.setAside(id, new ExpectedVersion(version), reason, who.author()),
                redirect);
    }

    @PostMapping("/take-back")
    String takeBack(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            RedirectAttributes redirect) {
        return done(
                id,
                "catalogue.apart.back",
                null,
                () -> catalogue.takeBack(id, new ExpectedVersion(version), who.author()),
                redirect);
    }

    @PostMapping("/values/set-aside")
    String setValueAside(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            @RequestParam(name = "value", defaultValue = "") String value,
            @RequestParam(name = "reason", defaultValue = "") String reason,
            RedirectAttributes redirect) {
        return done(
                id,
                "catalogue.apart.value.done",
                reason,
                () -> catalogue.setValueAside(id, new ExpectedVersion(version), value, reason, who.author()),
                redirect);
    }

    @PostMapping("/values/take-back")
    String takeValueBack(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            @RequestParam(name = "value", defaultValue = "") String value,
            RedirectAttributes redirect) {
        return done(
                id,
                "catalogue.apart.value.back",
                null,
                () -> catalogue.takeValueBack(id, new ExpectedVersion(version), value, who.author()),
                redirect);
    }

    /**
     * Settles a query.
     *
     * @param answer what was found; the reason where something is set aside
     * @param aside sets aside what the query is about, which settles it too
     */
    @PostMapping("/queries/{query}/settle")
    String settle(
            @AuthenticationPrincipal SignedIn who,
            @PathVariable long id,
            @PathVariable long query,
            @RequestParam(name = "answer", defaultValue = "") String answer,
            @RequestParam(name = "aside", defaultValue = "false") boolean aside,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            RedirectAttributes redirect) {
        if (aside) {
            return done(
                    id,
                    "catalogue.query.aside.done",
                    answer,
                    () -> catalogue.setAsideFor(id, query, new ExpectedVersion(version), answer, who.author()),
                    redirect);
        }
        return done(
                id,
                "catalogue.query.settled",
                answer,
                () -> catalogue.settle(id, query, answer, who.author()),
                redirect);
    }

    @PostMapping("/queries/{query}/reopen")
    String reopen(@PathVariable long id, @PathVariable long query, RedirectAttributes redirect) {
        return done(id, "catalogue.query.reopened", null, () -> catalogue.reopen(id, query), redirect);
    }

    /** Back to the page of the package, which says what was done, or what was refused together with what was typed. */
    private static String done(
            long id, String notice, @Nullable String typed, Runnable action, RedirectAttributes redirect) {
        try {
            action.run();
            redirect.addFlashAttribute("notice", notice);
        } catch (Impossible | Conflict | Stale refusal) {
            refused(refusal, typed, redirect);
        } catch (NotFound gone) {
            if (gone instanceof UnknownPackage) {
                throw gone;
            }
            refused(gone, typed, redirect);
        }
        return "redirect:/packages/" + id;
    }

    private static void refused(Refusal refusal, @Nullable String typed, RedirectAttributes redirect) {
        redirect.addFlashAttribute("refused", refusal.detail());
        redirect.addFlashAttribute("typed", typed);
    }
}
