package studio.stancebook.drawing.rendering;

import org.jspecify.annotations.Nullable;
import org.unbescape.html.HtmlEscape;

/** Collects elements as text that is SVG in a page and XML in a file; every value is escaped. */
final class Markup {

    private final StringBuilder text = new StringBuilder(8192);

    /** Begins an element on a line of its own, to be followed by its attributes. */
    Markup element(String name) {
        text.append("\n<").append(name);
        return this;
    }

    /** An attribute of the element that was begun last; nothing where the value is null. */
    Markup with(String name, @Nullable String value) {
        if (value != null) {
            text.append(' ').append(name).append("=\"");
            escaped(value);
            text.append('"');
        }
        return this;
    }

    /** Ends an element that holds nothing. */
    Markup empty() {
        text.append("/>");
        return this;
    }

    /** Ends the attributes of an element that holds something. */
    Markup holding() {
        text.append('>');
        return this;
    }

    /** Ends an element that holds a line of text. */
    Markup words(String name, String words) {
        text.append('>');
        escaped(words);
        return close(name);
    }

    Markup close(String name) {
        text.append("</").append(name).append('>');
        return this;
    }

    /** Path data and classes hold nothing to escape, and are most of a drawing. */
    private void escaped(String value) {
        boolean plain = true;
        for (int i = 0; plain && i < value.length(); i++) {
            char c = value.charAt(i);
            plain = c != '&' && c != '<' && c != '>' && c != '"' && c != '\'';
        }
        text.append(plain ? value : HtmlEscape.escapeHtml4Xml(value));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
