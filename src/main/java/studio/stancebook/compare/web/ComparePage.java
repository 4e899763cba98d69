package studio.stancebook.compare.web;

import io.swagger.v3.oas.annotations.Operation;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import studio.stancebook.access.SignedIn;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.compare.Compared;
import studio.stancebook.compare.Comparison;
import studio.stancebook.compare.Difference;
import studio.stancebook.compare.Differences;
import studio.stancebook.compare.Pick;
import studio.stancebook.compare.Picks;
import studio.stancebook.drawing.rendering.DownloadName;
import studio.stancebook.drawing.rendering.SideViewSvg;
import studio.stancebook.drawing.sideview.Alignment;
import studio.stancebook.drawing.sideview.OverlayDrawing;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Malformed;

/** Two to six packages or proposals laid over each other, with their differences. */
@Controller
class ComparePage {

    private static final MediaType SVG = new MediaType("image", "svg+xml", StandardCharsets.UTF_8);
    /** Of more than can be compared, so many are listed to take some away. */
    private static final int LISTED = 24;

    private final Picks picks;
    private final ClassSnapshots snapshots;
    private final StudioMeasures measures;
    private final SideViewSvg drawings;
    private final MessageSource messages;

    ComparePage(
            Picks picks,
            ClassSnapshots snapshots,
            StudioMeasures measures,
            SideViewSvg drawings,
            MessageSource messages) {
        this.picks = picks;
        this.snapshots = snapshots;
        this.measures = measures;
        this.drawings = drawings;
        this.messages = messages;
    }

    @GetMapping("/compare")
    String show(
            @ModelAttribute("form") CompareForm form,
            @AuthenticationPrincipal SignedIn who,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        CompareView view;
        try {
            view = view(form, who);
        } catch (Malformed malformed) {
            view = nothing(form, who, malformed);
        }
        if (view.errors().any()) {
            response.setStatus(400);
        }
        model.addAttribute("view", view);
        model.addAttribute(
                "alignments",
                words(
                        "compare.at.",
                        List.of(Alignment.values()).stream().map(Alignment::key).toList()));
        model.addAttribute("scales", words("compare.scale.", List.of("mm", "wheels")));
        model.addAttribute("query", request.getQueryString());
        return "compare/compare";
    }

    /** The drawing as a file of its own. */
    @Operation(summary = "Two to six side views laid over each other as SVG")
    @GetMapping("/compare/drawing.svg")
    ResponseEntity<String> drawing(@ModelAttribute("form") CompareForm form, @AuthenticationPrincipal SignedIn who) {
        List<Pick> picked = form.picks();
        if (picked.size() < OverlayDrawing.LEAST || picked.size() > OverlayDrawing.MOST) {
            throw Malformed.ofField("of", tooFewOrMany(picked.size()));
        }
        SideView drawing = comparison(picks.find(picked, who), form).drawing();
        if (drawing == null) {
            throw Malformed.ofField(
                    "of", "A sketch without dimension and one without tyres cannot be drawn to the same size.");
        }
        return ResponseEntity.ok()
                .headers(DownloadName.of("svg", "compare", drawing.title()).header())
                .contentType(SVG)
                .body(drawings.of(drawing));
    }

    private CompareView view(CompareForm form, SignedIn who) {
        List<Pick> picked = form.picks();
        form.alignment();
        form.wheels();
        List<Compared> chosen = picks.find(picked.stream().limit(LISTED).toList(), who);
        List<Picks.PickOption> choices = choices(form, chosen, who);
        if (picked.size() > OverlayDrawing.MOST) {
            FieldErrors errors = FieldErrors.of(Malformed.ofField("of", tooFewOrMany(picked.size())), "of");
            return new CompareView(chosen, null, List.of(), "", choices, errors);
        }
        if (chosen.size() < OverlayDrawing.LEAST) {
            return new CompareView(chosen, null, List.of(), "", choices, FieldErrors.none());
        }
        return new CompareView(
                chosen,
                comparison(chosen, form),
                differences(chosen),
                chosen.get(0).segmentName(),
                choices,
                FieldErrors.none());
    }

    private CompareView nothing(CompareForm form, SignedIn who, Malformed malformed) {
        return new CompareView(
                List.of(), null, List.of(), "", choices(form, List.of(), who), FieldErrors.of(malformed, "of"));
    }

    private static String tooFewOrMany(int picked) {
        return "From " + OverlayDrawing.LEAST + " to " + OverlayDrawing.MOST + " are compared, not " + picked + ".";
    }

    private Comparison comparison(List<Compared> chosen, CompareForm form) {
        String title = chosen.stream().map(Compared::name).collect(Collectors.joining(", "));
        return Comparison.of(title, chosen, form.alignment(), form.wheels());
    }

    /** A row for each measure, the most unusual difference first, with a cell for each of the others. */
    private List<DifferenceRow> differences(List<Compared> chosen) {
        ClassSnapshot snapshot = snapshots.of(chosen.get(0).segment());
        Differences differences = new Differences(measures.current(), snapshot::column);
        List<Compared> others = chosen.subList(1, chosen.size());
        Map<Measure, @Nullable Difference[]> rows = new LinkedHashMap<>();
        for (int i = 0; i < others.size(); i++) {
            for (Difference one : differences.between(chosen.get(0), List.of(others.get(i)))) {
                rows.computeIfAbsent(one.measure(), measure -> new Difference[others.size()])[i] = one;
            }
        }
        return rows.values().stream()
                .map(cells -> Arrays.asList(cells))
                .sorted(Comparator.comparingDouble(ComparePage::usual))
                .map(DifferenceRow::of)
                .toList();
    }

    /** Less the more unusual; what no class tells anything of comes last. */
    private static double usual(List<@Nullable Difference> cells) {
        return cells.stream()
                .filter(Objects::nonNull)
                .mapToDouble(one ->
                        one.spreads().isPresent() ? -Math.abs(one.spreads().getAsDouble()) : Double.POSITIVE_INFINITY)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** What is not picked yet. */
    private List<Picks.PickOption> choices(CompareForm form, List<Compared> chosen, SignedIn who) {
        Set<String> taken = chosen.stream().map(one -> one.pick().key()).collect(Collectors.toSet());
        String segment = chosen.isEmpty() ? null : chosen.get(0).segment();
        return picks.choices(form.words(), segment, who).stream()
                .filter(choice -> !taken.contains(choice.pick().key()))
                .toList();
    }

    private Map<String, String> words(String prefix, List<String> keys) {
        Map<String, String> words = new LinkedHashMap<>();
        keys.forEach(key -> words.put(key, messages.getMessage(prefix + key, null, LocaleContextHolder.getLocale())));
        return words;
    }
}
