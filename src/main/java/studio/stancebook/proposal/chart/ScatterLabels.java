package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.quantity.NumberText;

/**
 * Places names in a chart so that none lies on another name or on a mark: beside what it names where there is room, else
 * further off with a line to it. Room is kept for the larger letters of narrow pages. Looking closer moves names apart and
 * keeps their size, so names that are clear of each other stay so.
 */
final class ScatterLabels {

    /** The largest letters of {@code scatter.css} for names of ellipses and of proposals, px. */
    private static final double ELLIPSE_PX = 26;

    private static final double MARK_PX = 30;

    private static final double ASCENT = 0.76;
    private static final double DESCENT = 0.22;
    private static final int DIRECTIONS = 16;
    private static final double[] MARK_REACHES = {13, 26, 42, 62, 86, 114, 146, 182, 222, 270, 330, 400};
    private static final double[] ELLIPSE_REACHES = {4, 18, 36, 60, 90, 130, 180};
    private static final double LEADER_FROM = 26;

    /** What a dot under a name weighs, in px of distance. */
    private static final double DOT_WEIGHT = 14;

    private static final double STRANGER_WEIGHT = 60;

    private final LabelBox frame;
    private final List<LabelBox> taken = new ArrayList<>();
    private final List<double[]> dots = new ArrayList<>();
    private final List<List<double[]>> edges = new ArrayList<>();

    ScatterLabels(double left, double top, double right, double bottom) {
        this.frame = new LabelBox(left, top, right, bottom);
    }

    /**
     * Where a name stands.
     *
     * @param anchor {@code start}, {@code middle} or {@code end}
     * @param leader path data of the line to what is named; empty where it stands beside it
     */
    record LabelPlace(String x, String y, String anchor, String leader) {}

    private record LabelBox(double left, double top, double right, double bottom) {

        boolean meets(LabelBox other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean within(LabelBox other) {
            return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
        }

        boolean has(double[] point) {
            return point[0] > left && point[0] < right && point[1] > top && point[1] < bottom;
        }

        double[] nearest(double[] point) {
            return new double[] {Math.max(left, Math.min(right, point[0])), Math.max(top, Math.min(bottom, point[1]))};
        }
    }

    /** A way to place a name: where its words are anchored, what they take, and what speaks against it. */
    private record Try(double x, double y, String anchor, LabelBox box, double[] from, double reach, double cost) {}

    /** Keeps a mark free of names. */
    void keepFree(double x, double y, double around) {
        taken.add(new LabelBox(x - around, y - around, x + around, y + around));
    }

    /** A dot, which a name may cover where there is no better place. */
    void dot(double x, double y) {
        dots.add(new double[] {x, y});
    }

    /** Points along the edge of an ellipse, which names of others had better not stand at. */
    void ellipse(List<double[]> edge) {
        edges.add(edge);
    }

    /** The name of the proposal whose mark is at a point. */
    LabelPlace atMark(String name, double x, double y) {
        List<Try> tries = new ArrayList<>();
        for (double reach : MARK_REACHES) {
            around(name, true, MARK_PX, new double[] {x, y}, reach, 0, tries);
        }
        return best(tries);
    }

    /** The name of an ellipse, at its edge. */
    LabelPlace atEllipse(String name, List<double[]> edge) {
        List<Try> tries = new ArrayList<>();
        for (double[] at : edge) {
            for (double reach : ELLIPSE_REACHES) {
                double strange = nearStranger(at, edge, reach) ? STRANGER_WEIGHT : 0;
                around(name, false, ELLIPSE_PX, at, reach, strange, tries);
            }
        }
        return best(tries);
    }

    private boolean nearStranger(double[] at, List<double[]> own, double reach) {
        return edges.stream()
                .filter(edge -> edge != own)
                .flatMap(List::stream)
                .anyMatch(point -> Math.hypot(point[0] - at[0], point[1] - at[1]) < reach + 16);
    }

    private void around(
            String name, boolean strong, double sizePx, double[] from, double reach, double cost, List<Try> tries) {
        double width = LetterWidths.em(name, strong) * sizePx;
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = 2 * Math.PI * i / DIRECTIONS;
            double x = from[0] + reach * Math.cos(angle);
            double y = from[1] + reach * Math.sin(angle) + baseLine(Math.sin(angle)) * sizePx;
            String anchor = Math.cos(angle) > 0.3 ? "start" : Math.cos(angle) < -0.3 ? "end" : "middle";
            double left = anchor.equals("start") ? x : anchor.equals("end") ? x - width : x - width / 2;
            LabelBox box = new LabelBox(left, y - ASCENT * sizePx, left + width, y + DESCENT * sizePx);
            double covered = dots.stream().filter(box::has).count() * DOT_WEIGHT;
            tries.add(new Try(x, y, anchor, box, from, reach, cost + covered + reach));
        }
    }

    /** From a point to the base line of words that stand above it, beside it or below it, in em. */
    private static double baseLine(double down) {
        return down > 0.3 ? ASCENT : down < -0.3 ? -DESCENT : (ASCENT - DESCENT) / 2;
    }

    /** The cheapest that is free and within the frame; where none is, the cheapest that is within. */
    private LabelPlace best(List<Try> tries) {
        Try best = cheapest(tries.stream()
                .filter(one -> taken.stream().noneMatch(one.box()::meets))
                .toList());
        Try chosen = best == null ? cheapest(tries) : best;
        Try kept = chosen == null ? tries.get(0) : chosen;
        taken.add(kept.box());
        return new LabelPlace(
                NumberText.plain(kept.x(), 1), NumberText.plain(kept.y(), 1), kept.anchor(), leader(kept));
    }

    private @Nullable Try cheapest(List<Try> tries) {
        return tries.stream()
                .filter(one -> one.box().within(frame))
                .min((a, b) -> Double.compare(a.cost(), b.cost()))
                .orElse(null);
    }

    private static String leader(Try one) {
        if (one.reach() < LEADER_FROM) {
            return "";
        }
        double[] end = one.box().nearest(one.from());
        return "M" + NumberText.plain(one.from()[0], 1) + " " + NumberText.plain(one.from()[1], 1) + "L"
                + NumberText.plain(end[0], 1) + " " + NumberText.plain(end[1], 1);
    }
}
