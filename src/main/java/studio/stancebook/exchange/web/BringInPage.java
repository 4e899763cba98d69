package studio.stancebook.exchange.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.PackageListParameters;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.importing.Upload;
import studio.stancebook.exchange.importing.Uploads;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;
import studio.stancebook.problem.NotFound;
import studio.stancebook.problem.Refusal;

/** Where files come in and go out. */
@Controller
@RequestMapping("/bring-in")
class BringInPage {

    private final Uploads uploads;
    private final Segments segments;
    private final ExportAnswer export;
    private final MessageSource messages;

    BringInPage(Uploads uploads, Segments segments, ExportAnswer export, MessageSource messages) {
        this.uploads = uploads;
        this.segments = segments;
        this.export = export;
        this.messages = messages;
    }

    /** @param tooLarge set by {@link OversizeUpload}, which turns a file away before anybody reads it */
    @GetMapping
    String show(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "too-large", required = false) @Nullable String tooLarge,
            Model model) {
        FieldErrors errors = tooLarge == null
                ? FieldErrors.none()
                : FieldErrors.of(Malformed.ofField("file", word("exchange.file.too-large")), "file");
        return page(who, errors, model);
    }

    @PostMapping
    @RequiresPermission(Permission.RECORD_PACKAGES)
    String receive(
            @AuthenticationPrincipal SignedIn who,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response) {
        try {
            if (file == null) {
                throw Malformed.ofField("file", word("exchange.file.missing"));
            }
            Upload upload = uploads.receive(who.personId(), file);
            return "redirect:/bring-in/" + upload.id();
        } catch (Refusal refused) {
            response.setStatus(refused.type().status());
            return page(who, FieldErrors.of(refused, "file"), model);
        }
    }

    private String page(SignedIn who, FieldErrors errors, Model model) {
        List<SegmentView> all = segments.all();
        model.addAttribute("upload", uploadOf(who));
        model.addAttribute("segments", options(all));
        model.addAttribute("anything", all.stream().anyMatch(segment -> segment.packages() > 0));
        model.addAttribute("errors", errors);
        return "exchange/bring-in";
    }

    private @Nullable Upload uploadOf(SignedIn who) {
        return who.may(Permission.RECORD_PACKAGES) ? uploads.of(who.personId()).orElse(null) : null;
    }

    private Map<String, String> options(List<SegmentView> all) {
        Map<String, String> options = new LinkedHashMap<>();
        options.put("", word("exchange.out.all"));
        all.forEach(segment -> options.put(segment.key(), segment.name()));
        return options;
    }

    private String word(String key) {
        return messages.getMessage(key, null, LocaleContextHolder.getLocale());
    }

    /** Packages as a file, for people. */
    @GetMapping("/take-out")
    ResponseEntity<Resource> takeOut(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute PackageListParameters asked,
            @RequestParam(defaultValue = "csv") String format) {
        return export.of(asked, format, who);
    }

    /**
     * A table that the import takes as it is, to see how one can look and to fill in.
     *
     * @param table which of them
     * @throws NotFound if there is no such example
     */
    @GetMapping("/example.csv")
    ResponseEntity<String> example(@RequestParam(defaultValue = "full") String table) {
        ExampleTable example =
                ExampleTable.ofKey(table).orElseThrow(() -> new NotFound("example", TextLimit.shown(table)));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("packages-example-" + example.key() + ".csv")
                                .build()
                                .toString())
                .body(example.text());
    }
}
