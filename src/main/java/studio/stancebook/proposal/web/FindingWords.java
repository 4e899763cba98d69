package studio.stancebook.proposal.web;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Side;
import studio.stancebook.band.Verdict;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.Unit;
import studio.stancebook.dimension.Variable;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.moves.CarriedMove;
import studio.stancebook.moves.SingleMove;
import studio.stancebook.quantity.NumberText;

/** What a page says beside a verdict: by how much, why, and which single change would mend it. */
@Component
class FindingWords {

    /** As many moves are said of a measure. */
    static final int MOST_MOVES = 3;

    /** What the keys of lengths in tyre diameters end with. */
    private static final String IN_WHEELS = "-in-wheels";

    private final MessageSource messages;

    FindingWords(MessageSource messages) {
        this.messages = messages;
    }

    String revision(int number) {
        return words("proposal.revision.number", number);
    }

    /**
     * @param moves back to the edge where it is outside, as they are carried out
     * @param unscaled whether the lengths of the set are units of a sketch
     */
    String remark(Finding finding, List<CarriedMove> moves, boolean unscaled) {
        return finding.verdict() instanceof Verdict.Outside outside
                ? noted(far(finding, outside) + " " + moves(moves, unscaled), finding)
                : remarkWithoutMoves(finding);
    }

    /** As {@link #remark}, of a finding for which single moves were not looked for. */
    String remarkWithoutMoves(Finding finding) {
        return noted(said(finding), finding);
    }

    private static String noted(String said, Finding finding) {
        String notes = String.join(", ", finding.notes());
        return said.isEmpty() || notes.isEmpty() ? said + notes : said + " (" + notes + ")";
    }

    private String said(Finding finding) {
        if (finding.verdict() instanceof Verdict.Outside outside) {
            return far(finding, outside);
        }
        if (finding.verdict() instanceof Verdict.NotMeasurable none) {
            return none.reason();
        }
        Double uncertainty = finding.uncertainty();
        return finding.kind() == Verdict.VerdictKind.TOO_CLOSE && uncertainty != null
                ? words("proposal.remark.too-close", amount(2 * uncertainty, finding))
                : "";
    }

    /**
     * How far outside, as it stands beside a part of a drawing.
     *
     * @param wheelMm the diameter that lengths in wheels are counted in, so that they are said in mm as well
     */
    String over(Finding finding, OptionalDouble wheelMm) {
        if (finding.verdict() instanceof Verdict.Outside outside) {
            String amount = amount(outside.by(), finding);
            boolean inMm = finding.measure().endsWith(IN_WHEELS) && wheelMm.isPresent();
            return words(
                    side(finding, outside) == Side.LOW ? "proposal.remark.under" : "proposal.remark.over",
                    inMm ? Amounts.size(outside.by() * wheelMm.getAsDouble(), Unit.MM, false) : amount);
        }
        return "";
    }

    private String far(Finding finding, Verdict.Outside outside) {
        String key = "proposal.remark." + side(finding, outside).key();
        String by = amount(outside.by(), finding);
        return outside.byBandWidths().isPresent()
                ? words(key + "-of-width", by, percent(outside.byBandWidths().getAsDouble()))
                : words(key, by);
    }

    /** What lies above a band of angles from the horizontal lies below it when they are read from the vertical. */
    private static Side side(Finding finding, Verdict.Outside outside) {
        boolean high = (outside.side() == Side.HIGH) != LeaningAngles.turned(finding.measure());
        return high ? Side.HIGH : Side.LOW;
    }

    private static String percent(double bandWidths) {
        return NumberText.plain(100 * bandWidths, bandWidths < 0.01 ? 1 : 0);
    }

    private static String amount(double amount, Finding finding) {
        return NumberText.fixed(amount, finding.decimals() + 1) + finding.unit().symbol();
    }

    private String moves(List<CarriedMove> moves, boolean unscaled) {
        if (moves.isEmpty()) {
            return words("proposal.remark.no-move");
        }
        String either = moves.stream()
                .limit(MOST_MOVES)
                .map(move -> move(move, unscaled))
                .collect(Collectors.joining(words("proposal.remark.or")));
        return words("proposal.remark.moves", either);
    }

    /** "wheelbase −84 mm (overall length with it)": what is said can be done, so it is rounded away from the value now. */
    private String move(CarriedMove carried, boolean unscaled) {
        String alone = move(carried.move(), unscaled);
        GivesWay with = carried.with();
        return with == null ? alone : words("proposal.move.with", alone, words("proposal.move.with." + with.key()));
    }

    /** "wheelbase −84 mm", "cowl 52 mm forward". */
    String move(SingleMove move, boolean unscaled) {
        Variable variable = move.variable();
        String key = variable.key();
        if (key.endsWith(".x") || key.endsWith(".z")) {
            String way = "proposal.move." + key.charAt(key.length() - 1) + (move.change() > 0 ? "-more" : "-less");
            return words("proposal.part." + variable.valueKey()) + " "
                    + Amounts.reaching(move.change(), variable.unit(), unscaled) + " " + words(way);
        }
        String label = LeaningAngles.words(key, variable.label());
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) + " "
                + Amounts.signReaching(LeaningAngles.change(key, move.change()), variable.unit(), unscaled);
    }

    private String words(String key, Object... places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}
