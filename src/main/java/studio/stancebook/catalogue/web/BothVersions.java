package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.Section;

/** Something in two versions, field by field, each written in the same way: lengths in mm, angles from the horizontal. */
@Component
class BothVersions {

    private final MessageSource messages;

    BothVersions(MessageSource messages) {
        this.messages = messages;
    }

    List<ConflictRow> rows(PackageDraft yours, PackageView theirs) {
        List<ConflictRow> rows = new ArrayList<>();
        rows.add(row("name", "catalogue.name", yours.name(), theirs.name()));
        rows.add(row("segment", "catalogue.segment", yours.segment(), theirs.segment()));
        rows.add(row(
                "modelYear",
                "catalogue.year",
                PackageForm.year(yours.modelYear()),
                PackageForm.year(theirs.modelYear())));
        rows.add(row(
                "origin",
                "catalogue.origin",
                yours.origin().key(),
                theirs.origin().key()));
        DimensionForm mine = DimensionForm.of(yours.dimensions());
        DimensionForm kept = DimensionForm.of(theirs.dimensions());
        inputs().forEach((name, label) -> rows.add(new ConflictRow(name, label, mine.text(name), kept.text(name))));
        return rows;
    }

    List<ConflictRow> rows(SegmentForm yours, SegmentView theirs) {
        return List.of(
                row("name", "catalogue.name", yours.nameText(), theirs.name()),
                row(
                        "description",
                        "catalogue.segment.description",
                        yours.descriptionText().replace("\r\n", "\n"),
                        theirs.description().replace("\r\n", "\n")));
    }

    private ConflictRow row(String name, String label, String yours, String theirs) {
        return new ConflictRow(name, words(label), yours, theirs);
    }

    /** The label of every input that is part of the dimension set, in the order in which they are shown. */
    private Map<String, String> inputs() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(DimensionForm.PREFIX + "scale", words("dimension.form.scale"));
        labels.put(DimensionForm.PREFIX + "edition", words("dimension.form.edition"));
        List<Section> sections = DimensionForm.blank().sections();
        sections.forEach(section -> add(section, labels));
        sections.forEach(section -> section.doubts().forEach(doubt -> {
            labels.put(doubt.uncertainty().name(), words("dimension.form.uncertainty-of", doubt.label()));
            labels.put(doubt.origin().name(), words("dimension.form.origin-of", doubt.label()));
        }));
        return labels;
    }

    private static void add(Section section, Map<String, String> labels) {
        section.entries().forEach(entry -> labels.put(entry.name(), entry.labelAndUnit()));
        section.points().forEach(point -> {
            labels.put(point.x().name(), point.x().labelAndUnit());
            labels.put(point.z().name(), point.z().labelAndUnit());
        });
        section.lines().forEach(line -> labels.put(line.name(), line.labelAndUnit()));
    }

    private String words(String key, Object... places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
