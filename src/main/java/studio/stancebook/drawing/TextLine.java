package studio.stancebook.drawing;

import studio.stancebook.quantity.NumberText;

/**
 * A line of text.
 *
 * @param cls its classes, the first of which names the lettering
 * @param x of the anchor, mm
 * @param y of the base line, mm, downwards
 * @param anchor {@code start}, {@code middle} or {@code end}
 * @param text what is written; characters that XML does not allow are dropped
 */
public record TextLine(String cls, double x, double y, String anchor, String text) {

    public TextLine {
        text = Lettering.writable(text);
    }

    /** True where it is set in the strong weight. */
    public boolean strong() {
        return cls.startsWith("strong") || cls.endsWith(" out");
    }

    public String tx() {
        return NumberText.plain(x, 1);
    }

    public String ty() {
        return NumberText.plain(y, 1);
    }
}
