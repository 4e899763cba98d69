package studio.stancebook.underlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.Impossible;
import studio.stancebook.quantity.NumberText;

/**
 * Where a framework lies on its paper: mm of the vehicle to mm on paper.
 *
 * @param paper that it is on
 * @param denominator of the scale
 * @param originX where x = 0 of the vehicle lies on paper
 * @param groundY where the ground line lies on paper, downwards
 */
record Layout(PaperSize paper, int denominator, double originX, double groundY) {

    /** Between the edge of the paper and the frame. */
    static final double MARGIN_MM = 10;

    /** Rows of the table at the foot, in em of the lettering. */
    static final double TABLE_EM = 15.4;

    private static final double SIDE_EM = 3;
    private static final double HEAD_EM = 4.5;
    private static final double FOOT_EM = 7.5;

    double em() {
        return paper.letteringMm();
    }

    double x(double vehicleX) {
        return originX + vehicleX / denominator;
    }

    double y(double vehicleZ) {
        return groundY - vehicleZ / denominator;
    }

    double onPaper(double vehicleMm) {
        return vehicleMm / denominator;
    }

    double left() {
        return MARGIN_MM;
    }

    double right() {
        return paper.widthMm() - MARGIN_MM;
    }

    double top() {
        return MARGIN_MM;
    }

    /** Where the table begins. */
    double tableTop() {
        return paper.heightMm() - MARGIN_MM - TABLE_EM * em();
    }

    /**
     * The layout of a framework.
     *
     * @param wanted the denominator asked for; null for the least standard one that fits
     * @throws Impossible naming the scale, and what would fit, if it does not fit
     */
    static Layout of(Framework framework, PaperSize paper, @Nullable Integer wanted) {
        int least = leastDenominator(framework, paper);
        if (wanted != null && wanted < least) {
            throw Impossible.ofField("scale", tooLarge(framework, paper, wanted, least));
        }
        int denominator = wanted == null ? standard(paper, least) : wanted;
        double em = paper.letteringMm();
        double lengthMm = (framework.rearmost() - framework.foremost()) / denominator;
        double room = paper.widthMm() - 2 * MARGIN_MM;
        double originX = MARGIN_MM + (room - lengthMm) / 2 - framework.foremost() / denominator;
        double free = roomHighMm(paper) - framework.highest() / denominator;
        double groundY = paper.heightMm() - MARGIN_MM - (TABLE_EM + FOOT_EM) * em - free / 2;
        return new Layout(paper, denominator, originX, groundY);
    }

    /** The largest standard scale that fits. */
    private static int standard(PaperSize paper, int least) {
        return UnderlayOrder.DENOMINATORS.stream()
                .filter(denominator -> denominator >= least)
                .findFirst()
                .orElseThrow(() -> Impossible.ofField(
                        "paper",
                        "The drawing fits " + paper + " at none of the standard scales: choose larger paper."));
    }

    private static double roomLongMm(PaperSize paper) {
        return paper.widthMm() - 2 * MARGIN_MM - 2 * SIDE_EM * paper.letteringMm();
    }

    private static double roomHighMm(PaperSize paper) {
        return paper.heightMm() - 2 * MARGIN_MM - (HEAD_EM + FOOT_EM + TABLE_EM) * paper.letteringMm();
    }

    private static int leastDenominator(Framework framework, PaperSize paper) {
        double along = (framework.rearmost() - framework.foremost()) / roomLongMm(paper);
        double upwards = framework.highest() / roomHighMm(paper);
        return (int) Math.max(1, Math.ceil(Math.max(along, upwards) - 1e-9));
    }

    private static String tooLarge(Framework framework, PaperSize paper, int wanted, int least) {
        List<String> fits = new ArrayList<>();
        UnderlayOrder.DENOMINATORS.stream()
                .filter(denominator -> denominator >= least)
                .findFirst()
                .ifPresent(denominator -> fits.add("1:" + denominator + " fits " + paper));
        smallestPaper(framework, wanted).ifPresent(larger -> fits.add("1:" + wanted + " fits " + larger));
        return "At 1:" + wanted + " the drawing is "
                + NumberText.plain((framework.rearmost() - framework.foremost()) / wanted, 0) + " by "
                + NumberText.plain(framework.highest() / wanted, 0) + " mm, and " + paper + " has room for "
                + NumberText.plain(roomLongMm(paper), 0) + " by " + NumberText.plain(roomHighMm(paper), 0) + " mm: "
                + String.join(", ", fits) + ".";
    }

    private static Optional<PaperSize> smallestPaper(Framework framework, int denominator) {
        return List.of(PaperSize.values()).stream()
                .filter(paper -> leastDenominator(framework, paper) <= denominator)
                .findFirst();
    }
}
