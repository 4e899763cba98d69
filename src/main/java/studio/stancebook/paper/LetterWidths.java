package studio.stancebook.paper;

/** How wide words are on paper, to place them before they are written. */
public final class LetterWidths {

    private LetterWidths() {}

    /** Width in em, with the characters that stand in for those which the studio's face does not have. */
    public static double em(String text, boolean strong) {
        return Face.runs(text, strong).stream().mapToDouble(Face.Run::widthEm).sum();
    }
}
