package studio.stancebook.proposal.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Finding;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.proposal.MeasureChange;
import studio.stancebook.quantity.NumberText;

/**
 * A measure that differs between two assessments, as a page writes it.
 *
 * @param from with its unit; a dash where there was none
 * @param to with its unit; a dash where there is none
 * @param verdictFrom key of the verdict before; null where the measure was not there
 * @param verdictTo key of the verdict after; null where the measure is not there
 */
record ChangeLine(
        String name,
        String from,
        String to,
        @Nullable String verdictFrom,
        @Nullable String verdictTo) {

    private static final String NONE = "\u2013";

    static ChangeLine of(MeasureChange change) {
        Finding before = change.before();
        Finding after = change.after();
        return new ChangeLine(
                LeaningAngles.words(change.either().measure(), change.either().name()),
                value(before),
                value(after),
                before == null ? null : before.verdict().key(),
                after == null ? null : after.verdict().key());
    }

    private static String value(@Nullable Finding finding) {
        Double value = finding == null ? null : finding.value();
        return finding == null || value == null
                ? NONE
                : NumberText.shown(LeaningAngles.value(finding.measure(), value), finding.decimals() + 1)
                        + finding.unit().symbol();
    }
}
