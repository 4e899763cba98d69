package studio.stancebook.exchange.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.InputStreamResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
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
import studio.stancebook.dimension.Origin;
import studio.stancebook.exchange.importing.ColumnChoice;
import studio.stancebook.exchange.importing.ImportJob;
import studio.stancebook.exchange.importing.ImportOptions;
import studio.stancebook.exchange.importing.ImportReport;
import studio.stancebook.exchange.importing.ImportStatus;
import studio.stancebook.exchange.importing.ImportWizard;
import studio.stancebook.exchange.importing.PackageFile.TableSample;
import studio.stancebook.exchange.importing.Upload;
import studio.stancebook.exchange.importing.Uploads;
import studio.stancebook.exchange.table.TableFile;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.NotFound;

/** One upload, step by step: what its columns hold, what came of checking it, bringing it in. */
@Controller
@RequestMapping("/bring-in/{id}")
@RequiresPermission(Permission.RECORD_PACKAGES)
class UploadPage {

    private final Uploads uploads;
    private final ImportWizard wizard;
    private final TargetWords words;
    private final ChangeWords changes;
    private final SegmentWords segmentWords;

    UploadPage(
            Uploads uploads, ImportWizard wizard, TargetWords words, ChangeWords changes, SegmentWords segmentWords) {
        this.segmentWords = segmentWords;
        this.changes = changes;
        this.uploads = uploads;
        this.wizard = wizard;
        this.words = words;
    }

    @ModelAttribute("upload")
    Upload upload(@AuthenticationPrincipal SignedIn who, @PathVariable String id) {
        return uploads.get(who.personId(), id);
    }

    @GetMapping
    String show(@AuthenticationPrincipal SignedIn who, @ModelAttribute("upload") Upload upload, Model model) {
        return upload.busy() ? toReport(upload) : mapping(who, upload, FieldErrors.none(), model);
    }

    @PostMapping("/sheet")
    String sheet(@ModelAttribute("upload") Upload upload, @RequestParam String sheet) {
        TableFile table = upload.table();
        if (table != null && table.sheets().contains(sheet) && !upload.busy()) {
            upload.takeSheet(sheet);
        }
        return "redirect:/bring-in/" + upload.id();
    }

    /** Keeps what was chosen and checks the file by it. */
    @PostMapping("/check")
    String check(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute("upload") Upload upload,
            @RequestParam(defaultValue = "") List<String> target,
            @RequestParam(defaultValue = "") List<String> unit,
            @ModelAttribute OptionsForm form,
            @RequestParam MultiValueMap<String, String> all,
            Model model,
            HttpServletResponse response) {
        ImportCalls.requireMayCreate(who, form.makesSegments());
        upload.choose(choices(target, unit), form.options(SegmentWords.pointed(all)));
        return checked(who, upload, model, response);
    }

    /** Checks again by what was chosen before, but keeping the good rows. */
    @PostMapping("/check-partial")
    String checkPartial(
            @AuthenticationPrincipal SignedIn who,
            @ModelAttribute("upload") Upload upload,
            Model model,
            HttpServletResponse response) {
        upload.choose(
                Objects.requireNonNullElse(upload.choices(), List.of()),
                options(upload).keepingGoodRows());
        return checked(who, upload, model, response);
    }

    private String checked(SignedIn who, Upload upload, Model model, HttpServletResponse response) {
        try {
            wizard.start(upload, options(upload), who.author());
            return toReport(upload);
        } catch (Impossible refused) {
            response.setStatus(refused.type().status());
            return mapping(who, upload, FieldErrors.of(refused, "column-0"), model);
        }
    }

    private static List<ColumnChoice> choices(List<String> targets, List<String> units) {
        List<ColumnChoice> choices = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            choices.add(new ColumnChoice(targets.get(i), i < units.size() ? units.get(i) : ""));
        }
        return choices;
    }

    /** Brings in what was checked; changes of packages only as they were shown. */
    @PostMapping("/write")
    String write(@AuthenticationPrincipal SignedIn who, @ModelAttribute("upload") Upload upload) {
        ImportOptions wished = options(upload);
        ImportCalls.requireMayCreate(who, wished.createSegments());
        ImportJob check = upload.job();
        ImportReport seen = check == null ? null : check.status().report();
        if (seen != null || !wished.update()) {
            wizard.start(upload, wished.writing(seen == null ? null : seen.state()), who.author());
        }
        return toReport(upload);
    }

    @GetMapping("/report")
    String report(@ModelAttribute("upload") Upload upload, Model model) {
        ImportJob job = upload.job();
        if (job == null) {
            return "redirect:/bring-in/" + upload.id();
        }
        ImportStatus run = job.status();
        ImportReport report = run.report();
        model.addAttribute("run", run);
        model.addAttribute("refused", job.refused());
        model.addAttribute("view", report == null ? null : ReportView.of(run, report, options(upload), changes));
        return "exchange/report";
    }

    /** The part of the report's page that tells how far a run is; when it is done, the whole page is asked for anew. */
    @GetMapping("/progress")
    String progress(@ModelAttribute("upload") Upload upload, Model model, HttpServletResponse response) {
        ImportJob job = upload.job();
        if (job == null) {
            throw new NotFound("run of the file", upload.fileName());
        }
        ImportStatus run = job.status();
        if (!run.running()) {
            response.setHeader("HX-Refresh", "true");
        }
        model.addAttribute("run", run);
        return "exchange/progress :: progress(upload=${upload}, run=${run})";
    }

    /** The refused rows with their reasons, as a table to mend; the report where there is none. */
    @GetMapping("/refused.csv")
    ResponseEntity<Resource> refused(@ModelAttribute("upload") Upload upload) throws IOException {
        ImportJob job = upload.job();
        ImportJob.RefusedTable table = job == null ? null : job.refused();
        if (table == null) {
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .location(URI.create("/bring-in/" + upload.id() + "/report"))
                    .build();
        }
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(refusedName(upload.fileName()))
                                .build()
                                .toString())
                .body(new InputStreamResource(Files.newInputStream(table.file())));
    }

    /** {@code cars.csv} gives {@code cars-refused.csv}. */
    private static String refusedName(String fileName) {
        String base = fileName.replaceFirst("\\.[A-Za-z]{1,4}$", "").replaceAll("[^A-Za-z0-9._-]+", "-");
        return base + "-refused.csv";
    }

    @PostMapping("/discard")
    String discard(@ModelAttribute("upload") Upload upload, RedirectAttributes redirect) {
        uploads.discard(upload);
        redirect.addFlashAttribute("notice", "exchange.discarded");
        redirect.addFlashAttribute("noticeWords", new Object[] {upload.fileName()});
        return "redirect:/bring-in";
    }

    private static String toReport(Upload upload) {
        return "redirect:/bring-in/" + upload.id() + "/report";
    }

    private static ImportOptions options(Upload upload) {
        return Objects.requireNonNullElse(upload.options(), OptionsForm.USUAL);
    }

    private String mapping(SignedIn who, Upload upload, FieldErrors errors, Model model) {
        TableFile table = upload.table();
        FieldErrors tied = errors;
        if (table != null) {
            TableSample sample = wizard.sample(table, upload.sheet());
            List<TargetWords.TargetGroup> groups = words.groups();
            tied = MappingView.tied(errors.all(), sample.headings());
            model.addAttribute("mapping", MappingView.of(sample, wizard.choices(upload, sample), groups, tied));
            model.addAttribute("groups", groups);
            model.addAttribute("units", words.units());
            model.addAttribute("sheets", sheets(table));
        }
        model.addAttribute("segmentWords", segmentWords.of(upload));
        model.addAttribute("segments", segmentWords.choices());
        model.addAttribute("errors", tied);
        model.addAttribute("options", options(upload));
        model.addAttribute("origins", origins());
        return "exchange/mapping";
    }

    private static @Nullable Map<String, String> sheets(TableFile table) {
        if (table.sheets().size() < 2) {
            return null;
        }
        Map<String, String> sheets = new LinkedHashMap<>();
        table.sheets().forEach(name -> sheets.put(name, name));
        return sheets;
    }

    private static Map<String, String> origins() {
        Map<String, String> origins = new LinkedHashMap<>();
        for (Origin origin : Origin.values()) {
            origins.put(origin.key(), origin.label());
        }
        return origins;
    }
}
