package studio.stancebook.measure.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.measure.UnknownMeasure;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;

/** The ratios that the studio adds to the list of measures. */
@Controller
@RequestMapping("/studio/ratios")
class RatioPages {

    private final StudioMeasures measures;
    private final MessageSource messages;

    RatioPages(StudioMeasures measures, MessageSource messages) {
        this.measures = measures;
        this.messages = messages;
    }

    /** Names of the lengths to choose from, by key; the first is none. */
    @ModelAttribute("lengths")
    Map<String, String> lengths() {
        Map<String, String> lengths = new LinkedHashMap<>();
        lengths.put("", messages.getMessage("measure.ratio.none", null, LocaleContextHolder.getLocale()));
        RatioReading.lengths().forEach(reading -> lengths.put(reading.key(), reading.label()));
        return lengths;
    }

    @GetMapping
    String show(Model model) {
        return page(RatioForm.empty(), FieldErrors.none(), model);
    }

    @PostMapping
    @RequiresPermission(Permission.DEFINE_RATIOS)
    String add(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute RatioForm form,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            StudioRatio added = measures.add(form.ratio(), who.author());
            return done("measure.ratio.added", added.name(), redirect);
        } catch (Impossible | Conflict refusal) {
            response.setStatus(refusal.type().status());
            return page(form, FieldErrors.of(refusal, "key"), model);
        }
    }

    @GetMapping("/{key}/remove")
    @RequiresPermission(Permission.DEFINE_RATIOS)
    String askToRemove(@PathVariable String key, Model model) {
        model.addAttribute("ratio", ratio(key));
        return "measure/ratio-remove";
    }

    @PostMapping("/{key}/remove")
    @RequiresPermission(Permission.DEFINE_RATIOS)
    String remove(@PathVariable String key, RedirectAttributes redirect) {
        StudioRatio ratio = ratio(key);
        measures.remove(key);
        return done("measure.ratio.removed", ratio.name(), redirect);
    }

    private StudioRatio ratio(String key) {
        return measures.ratios().stream()
                .filter(ratio -> ratio.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new UnknownMeasure(key));
    }

    private static String done(String notice, String name, RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", notice);
        redirect.addFlashAttribute("noticeWords", new Object[] {name});
        return "redirect:/studio/ratios";
    }

    private String page(RatioForm form, FieldErrors errors, Model model) {
        model.addAttribute("ratios", measures.ratios());
        model.addAttribute("form", form);
        model.addAttribute("errors", errors);
        return "measure/ratios";
    }
}
