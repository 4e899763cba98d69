package studio.stancebook.web.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The custom properties of colours as they stand in the style sheet, for one theme. */
final class Colours {

    private static final Path SHEET = Path.of("src/main/resources/static/assets/css/settings/colours.css");
    private static final Pattern PAIR = Pattern.compile("--([a-z-]+): light-dark\\(#([0-9a-f]{6}), #([0-9a-f]{6})\\);");

    private final Map<String, Integer> byName;

    private Colours(Map<String, Integer> byName) {
        this.byName = byName;
    }

    static Colours ofLight() throws Exception {
        return read(2);
    }

    static Colours ofDark() throws Exception {
        return read(3);
    }

    private static Colours read(int group) throws Exception {
        Map<String, Integer> found = new TreeMap<>();
        Matcher pairs = PAIR.matcher(Files.readString(SHEET));
        while (pairs.find()) {
            found.put(pairs.group(1), Integer.parseInt(pairs.group(group), 16));
        }
        return new Colours(found);
    }

    Map<String, Integer> all() {
        return byName;
    }

    /** The contrast ratio by WCAG 2.2, from 1 to 21: (L1 + 0.05) / (L2 + 0.05), L1 the lighter relative luminance. */
    double contrast(String one, String other) {
        return contrast(byName.get(one), byName.get(other));
    }

    /** A colour over another with some opacity from 0 to 1, as browsers mix them: channel by channel in sRGB. */
    int mixed(String over, double opacity, String ground) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int top = byName.get(over) >> shift & 255;
            int below = byName.get(ground) >> shift & 255;
            mixed |= (int) Math.round(opacity * top + (1 - opacity) * below) << shift;
        }
        return mixed;
    }

    static double contrast(int one, int other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    /** Relative luminance by WCAG 2.2 of an sRGB colour. */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
