package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.dimension.form.VersionRow;
import studio.stancebook.dimension.form.VersionRows;

/** Something in two versions, field by field, each written in the same way. */
@Component
class BothVersions {

    private final MessageSource messages;

    BothVersions(MessageSource messages) {
        this.messages = messages;
    }

    List<VersionRow> rows(PackageDraft yours, PackageView theirs) {
        List<VersionRow> rows = new ArrayList<>();
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
        rows.addAll(VersionRows.of(yours.dimensions(), theirs.dimensions(), this::words));
        return rows;
    }

    List<VersionRow> rows(SegmentForm yours, SegmentView theirs) {
        return List.of(
                row("name", "catalogue.name", yours.nameText(), theirs.name()),
                row("description", "catalogue.segment.description", yours.descriptionText(), theirs.description()));
    }

    private VersionRow row(String name, String label, String yours, String theirs) {
        return new VersionRow(name, words(label, new Object[0]), yours, theirs);
    }

    private String words(String key, Object[] places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
