package studio.stancebook.proposal.web;

import static studio.stancebook.proposal.web.ReviewSheet.DRAWING_MM;
import static studio.stancebook.proposal.web.ReviewSheet.INK;
import static studio.stancebook.proposal.web.ReviewSheet.MARGIN_MM;
import static studio.stancebook.proposal.web.ReviewSheet.SOFT;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.paper.Anchor;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Group.StructureRole;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.Paragraphs;
import studio.stancebook.paper.Path;
import studio.stancebook.proposal.Decision;
import studio.stancebook.proposal.Outcome;

/** The box of a review sheet for the decision: as it was taken, or to be filled in by hand. */
final class DecisionBox {

    private static final double INSET_MM = 3;
    private static final double TICK_MM = 4;

    private final @Nullable Decision decision;
    private final Words words;
    private final List<Group> groups = new ArrayList<>();
    private final List<Mark> rules = new ArrayList<>();

    /** The words of a message. */
    interface Words {
        String of(String key, Object... places);
    }

    DecisionBox(@Nullable Decision decision, Words words) {
        this.decision = decision;
        this.words = words;
    }

    List<Group> groups(double top, double foot) {
        double left = MARGIN_MM + INSET_MM;
        double wide = DRAWING_MM - 2 * INSET_MM;
        Paragraphs head = new Paragraphs(left, top + INSET_MM, wide, foot);
        rules.add(new Mark.Trace(Path.rectangle(MARGIN_MM, top, DRAWING_MM, foot - top), Ink.line(INK, 0.35)));
        head.add(StructureRole.HEADING, words.of("proposal.sheet.decision"), 3.6, true, INK);
        double y = head.y() + 5;
        double third = wide / 3;
        for (Outcome outcome : Outcome.values()) {
            choice(outcome, left + outcome.ordinal() * third, y);
        }
        groups.add(label(left, y + 9, words.of("proposal.sheet.reason"), SOFT));
        rules.add(rule(left, y + 15, wide));
        rules.add(rule(left, y + 22, wide));
        reason(left, y + 10.5, wide, y + 22);
        sign("name", left, y, third, decision == null ? "" : decision.by());
        sign("date", left + third, y, third, decision == null ? "" : Amounts.time(decision.at()));
        sign("signature", left + 2 * third, y, third, "");
        groups.addAll(0, head.groups());
        groups.add(Group.of("rules", StructureRole.ARTIFACT, rules));
        return groups;
    }

    private void choice(Outcome outcome, double x, double y) {
        double top = y - 3.2;
        rules.add(new Mark.Trace(Path.rectangle(x, top, TICK_MM, TICK_MM), Ink.line(INK, 0.3)));
        String said = words.of("proposal.sheet.decision." + outcome.key());
        boolean taken = decision != null && decision.outcome() == outcome;
        if (taken) {
            rules.add(new Mark.Trace(Path.line(x, top, x + TICK_MM, top + TICK_MM), Ink.line(INK, 0.6)));
            rules.add(new Mark.Trace(Path.line(x, top + TICK_MM, x + TICK_MM, top), Ink.line(INK, 0.6)));
        }
        groups.add(label(x + 6, y, taken ? words.of("proposal.sheet.decision.taken", said) : said, INK));
    }

    private void reason(double x, double y, double wide, double foot) {
        if (decision != null) {
            Paragraphs text = new Paragraphs(x, y, wide, foot);
            text.add(StructureRole.PARAGRAPH, decision.reason(), 3, false, INK);
            groups.addAll(text.groups());
        }
    }

    private void sign(String what, double x, double y, double third, String filled) {
        rules.add(rule(x, y + 33, third - 8));
        groups.add(label(x, y + 37, words.of("proposal.sheet." + what), SOFT));
        if (!filled.isEmpty()) {
            groups.add(label(x, y + 32, filled, INK));
        }
    }

    private static Mark rule(double x, double y, double width) {
        return new Mark.Trace(Path.line(x, y, x + width, y), Ink.line(SOFT, 0.2));
    }

    private static Group label(double x, double y, String text, String colour) {
        Mark written = new Mark.Writing(x, y, Anchor.START, 3, false, colour, null, text);
        return Group.of("label", StructureRole.PARAGRAPH, List.of(written));
    }
}
