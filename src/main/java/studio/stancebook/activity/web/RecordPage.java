package studio.stancebook.activity.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityRecord;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;

/** The activity record, for leads. */
@Controller
@RequestMapping("/studio/record")
@RequiresPermission(Permission.READ_ACTIVITY)
class RecordPage {

    private final ActivityRecord activity;
    private final RecordExport export;
    private final MessageSource messages;

    RecordPage(ActivityRecord activity, RecordExport export, MessageSource messages) {
        this.activity = activity;
        this.export = export;
        this.messages = messages;
    }

    @GetMapping
    String show(
            @ModelAttribute("asked") ActivityParameters asked,
            Pageable page,
            Model model,
            HttpServletResponse response) {
        model.addAttribute("people", people());
        model.addAttribute("kinds", kinds());
        try {
            model.addAttribute("lines", lines(asked.filter(), page));
            model.addAttribute("errors", FieldErrors.none());
        } catch (Malformed refusal) {
            response.setStatus(refusal.type().status());
            model.addAttribute("lines", Page.empty(page));
            model.addAttribute("errors", FieldErrors.of(refusal, "from"));
        }
        return "activity/record";
    }

    private Page<RecordLine> lines(ActivityFilter filter, Pageable page) {
        return activity.list(filter, page).map(RecordLine::of);
    }

    @GetMapping("/verification")
    String verify(Model model) {
        model.addAttribute("found", activity.verify());
        return "activity/verification";
    }

    @GetMapping("/export")
    void export(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute ActivityParameters asked,
            @RequestParam(defaultValue = "csv") String format,
            HttpServletResponse response)
            throws IOException {
        export.write(who, asked, format, response);
    }

    private Map<String, String> people() {
        Map<String, String> people = anything("activity.record.anybody");
        activity.people().entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .forEach(person -> people.put(String.valueOf(person.getKey()), person.getValue()));
        return people;
    }

    private Map<String, String> kinds() {
        Map<String, String> kinds = anything("activity.record.anything");
        activity.kinds().forEach(kind -> kinds.put(kind, kind));
        return kinds;
    }

    private Map<String, String> anything(String key) {
        Map<String, String> options = new LinkedHashMap<>();
        options.put("", messages.getMessage(key, null, LocaleContextHolder.getLocale()));
        return options;
    }
}
