package studio.stancebook.tyre;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tyre sizes. Every pattern is applied to upper-case text with single spaces. */
final class DesignationReader {

    private static final int LONGEST_TEXT = 80;

    private static final String RIM_AND_REST =
            " ?(?<rim>\\d{1,2}(?:\\.5)?) ?(?<suffix>(?:LT|ST|C)(?:/[B-N])?|/?[B-N])?(?<rest>[ (].*)?";

    private static final Pattern METRIC =
            Pattern.compile("(?<prefix>P|LT|ST|T|HL)? ?(?<width>\\d{3}) ?/ ?(?<aspect>\\d{2,3}) ?"
                    + "(?<construction>[QSTUHVWZ]?RF?|[BD-])" + RIM_AND_REST);

    private static final Pattern FLOTATION =
            Pattern.compile("(?:LT ?)?(?<diameter>\\d{2}(?:\\.\\d{1,2})?) ?X ?(?<width>\\d{1,2}(?:\\.\\d{1,2})?) ?"
                    + "(?<construction>[RBD-])" + RIM_AND_REST);

    private static final Pattern WITHOUT_ASPECT_RATIO =
            Pattern.compile("(?:P|LT|ST|T)? ?(?:\\d{3}|\\d{1,2}\\.\\d{1,2}) ?(?:[QSTUHVWZ]?R|[BD-]) ?\\d{2}(?:\\D.*)?");

    private static final String LOAD_AND_SPEED = "\\d{2,3}(?:/\\d{2,3})? ?(?:A[1-8]|[B-HJ-NP-WY])?";
    private static final String MARKING = "XL|RF|RFT|ROF|SL|LL|TL|TT|M\\+S|3PMSF|\\d{1,2} ?PR|EXTRA LOAD|REINFORCED";
    private static final String SERVICE_ITEM =
            "(?:" + LOAD_AND_SPEED + "|\\(" + LOAD_AND_SPEED + "\\)|" + MARKING + ")";
    private static final Pattern SERVICE = Pattern.compile(SERVICE_ITEM + "(?: ?" + SERVICE_ITEM + "){0,4}");

    private static final String ACCEPTED =
            "accepted are metric sizes such as 265/70R17 or LT235/85R16 120/116R and flotation sizes such as 35x12.50R17LT";
    private static final String ASPECT_RATIO_MISSING =
            "it has no aspect ratio, and old tables disagree about the one to assume;"
                    + " give the aspect ratio as in 185/80R14, or the overall diameter instead";

    private DesignationReader() {}

    /** @throws UnknownTyreDesignation if the text is no size, see {@link TyreDesignation#parse} */
    static TyreDesignation read(String text) {
        String tidy = tidied(text);
        try {
            return readTidied(tidy);
        } catch (IllegalArgumentException unacceptable) {
            throw UnknownTyreDesignation.of(text, String.valueOf(unacceptable.getMessage()));
        }
    }

    private static String tidied(String text) {
        String bounded = text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT + 1);
        return bounded.toUpperCase(Locale.ROOT)
                .replace('\u00d7', 'X')
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static TyreDesignation readTidied(String tidy) {
        if (tidy.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException("it is longer than " + LONGEST_TEXT + " characters; " + ACCEPTED);
        }
        Matcher metric = METRIC.matcher(tidy);
        if (metric.matches()) {
            return metric(metric);
        }
        Matcher flotation = FLOTATION.matcher(tidy);
        if (flotation.matches()) {
            return flotation(flotation);
        }
        boolean old = WITHOUT_ASPECT_RATIO.matcher(tidy).matches();
        throw new IllegalArgumentException(old ? ASPECT_RATIO_MISSING : ACCEPTED);
    }

    private static MetricDesignation metric(Matcher size) {
        return new MetricDesignation(
                group(size, "prefix"),
                number(size, "width"),
                number(size, "aspect"),
                group(size, "construction"),
                number(size, "rim"),
                group(size, "suffix"),
                service(size));
    }

    private static FlotationDesignation flotation(Matcher size) {
        return new FlotationDesignation(
                number(size, "diameter"),
                number(size, "width"),
                group(size, "construction"),
                number(size, "rim"),
                group(size, "suffix"),
                service(size));
    }

    private static String service(Matcher size) {
        String rest = group(size, "rest").strip();
        if (!rest.isEmpty() && !SERVICE.matcher(rest).matches()) {
            throw new IllegalArgumentException("'" + rest + "' after the size is no load index and speed symbol,"
                    + " accepted are for example 91V, 120/116R, (92Y) or 91V XL");
        }
        return rest;
    }

    private static String group(Matcher size, String name) {
        String found = size.group(name);
        return found == null ? "" : found;
    }

    private static double number(Matcher size, String name) {
        return Double.parseDouble(group(size, name));
    }
}
