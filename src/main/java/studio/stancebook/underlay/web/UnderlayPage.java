package studio.stancebook.underlay.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Malformed;
import studio.stancebook.problem.Refusal;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.underlay.Framework;
import studio.stancebook.underlay.PaperSize;
import studio.stancebook.underlay.Proportion;
import studio.stancebook.underlay.UnderlayOrder;
import studio.stancebook.underlay.Underlays;

/** Where a sheet is chosen, looked at and taken out. */
@Controller
class UnderlayPage {

    private static final int PROPOSALS_OFFERED = 100;

    private final Underlays underlays;
    private final Segments segments;
    private final Proposals proposals;
    private final StudioMeasures measures;

    UnderlayPage(Underlays underlays, Segments segments, Proposals proposals, StudioMeasures measures) {
        this.underlays = underlays;
        this.segments = segments;
        this.proposals = proposals;
        this.measures = measures;
    }

    /** Draws at once when enough is said. */
    @GetMapping("/underlay")
    String show(
            @RequestParam Map<String, String> typed,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        OrderForm form = new OrderForm(typed);
        choices(form, who, model);
        model.addAttribute("errors", FieldErrors.none());
        if (form.sent()) {
            try {
                sheet(typed, underlays.draw(form.order(), who), model);
            } catch (Malformed | Impossible refusal) {
                refuse(refusal, model, response);
            }
        }
        return "underlay/underlay";
    }

    private static void refuse(Refusal refusal, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("errors", FieldErrors.of(refusal, "segment"));
    }

    /** A field for the point of a band. */
    record PointField(String name, String label, String value) {}

    private void choices(OrderForm form, SignedIn who, Model model) {
        Map<String, String> segmentNames = new LinkedHashMap<>(Map.of("", ""));
        segments.names().forEach(segment -> segmentNames.put(segment.key(), segment.name()));
        Map<String, String> proposalNames = new LinkedHashMap<>(Map.of("", ""));
        proposals
                .list(ProposalFilter.all(), PageRequest.of(0, PROPOSALS_OFFERED), who)
                .forEach(proposal -> proposalNames.put(String.valueOf(proposal.id()), proposal.name()));
        Map<String, String> papers = new LinkedHashMap<>();
        List.of(PaperSize.values()).forEach(paper -> papers.put(paper.key(), paper.name()));
        Map<String, String> scales = new LinkedHashMap<>();
        UnderlayOrder.DENOMINATORS.forEach(one -> scales.put(String.valueOf(one), "1:" + one));
        List<PointField> points = new ArrayList<>();
        Framework.MEASURES.forEach(key -> points.add(new PointField(
                OrderForm.POINT + key, measures.current().get(key).name(), form.get(OrderForm.POINT + key))));
        model.addAttribute("form", form);
        model.addAttribute("segments", segmentNames);
        model.addAttribute("proposals", proposalNames);
        model.addAttribute("papers", papers);
        model.addAttribute("scales", scales);
        model.addAttribute("paper", form.get("paper").isEmpty() ? PaperSize.A3.key() : form.get("paper"));
        model.addAttribute("points", points);
        model.addAttribute(
                "anyPoint", points.stream().anyMatch(point -> !point.value().isEmpty()));
    }

    /** A line of the table behind the picture. */
    record TableLine(String name, String value, String mm, String lower, String upper, String version, String basis) {

        static TableLine of(Framework framework, Proportion proportion) {
            Interval band = proportion.band();
            Integer version = proportion.bandVersion();
            return new TableLine(
                    proportion.name(),
                    number(proportion.value(), proportion.decimals()) + (proportion.degrees() ? "\u00b0" : ""),
                    proportion.degrees()
                            ? ""
                            : ShownUnits.plain(proportion.value() * framework.diameter(), 0)
                                    .replace('-', '\u2212'),
                    band == null ? "" : edge(band.lower(), proportion.decimals()),
                    band == null ? "" : edge(band.upper(), proportion.decimals()),
                    version == null ? "" : String.valueOf(version),
                    proportion.basis().key());
        }

        private static String edge(double edge, int decimals) {
            return Double.isFinite(edge) ? number(edge, decimals) : "";
        }

        private static String number(double value, int decimals) {
            return NumberText.shown(value, decimals);
        }
    }

    private static void sheet(Map<String, String> typed, Underlays.Underlay sheet, Model model) {
        Framework framework = sheet.framework();
        model.addAttribute("sheet", sheet.page());
        model.addAttribute("framework", framework);
        model.addAttribute("denominator", sheet.denominator());
        model.addAttribute(
                "lines",
                framework.proportions().values().stream()
                        .map(proportion -> TableLine.of(framework, proportion))
                        .toList());
        model.addAttribute("missing", String.join(", ", framework.missing()));
        for (String kind : List.of("svg", "pdf", "png")) {
            model.addAttribute(kind, address(kind, typed));
        }
    }

    private static String address(String kind, Map<String, String> typed) {
        UriComponentsBuilder address = UriComponentsBuilder.fromPath("/underlay." + kind);
        Map<String, String> values = new LinkedHashMap<>();
        int number = 0;
        for (Map.Entry<String, String> entry : typed.entrySet()) {
            if (!entry.getValue().isBlank() && entry.getKey().matches("[A-Za-z.-]{1,60}")) {
                address.queryParam(entry.getKey(), "{v" + number + "}");
                values.put("v" + number++, entry.getValue());
            }
        }
        return address.encode().buildAndExpand(values).toUriString();
    }
}
