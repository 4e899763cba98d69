package studio.stancebook.underlay.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.LengthText;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Malformed;
import studio.stancebook.problem.Refusal;
import studio.stancebook.quantity.NumberReading;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.tyre.TyreDesignation;
import studio.stancebook.underlay.Framework;
import studio.stancebook.underlay.PaperSize;
import studio.stancebook.underlay.UnderlayOrder;

/**
 * What sheet is wanted, as typed.
 *
 * @param typed by name of the field; a point of a band is {@code at.} and the key of the measure
 */
record OrderForm(Map<String, String> typed) {

    static final String POINT = "at.";

    private static final String OUTLINE = "outline";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final String FIT = "fit";
    private static final int MOST_SHOWN = 40;

    OrderForm {
        typed = Map.copyOf(typed);
    }

    /** What stands in a field; empty where nothing does. Public because the page asks. */
    public String get(String field) {
        return typed.getOrDefault(field, "").strip();
    }

    /** Whether there is enough to draw, or to say what is missing. */
    boolean sent() {
        return typed.containsKey("scale")
                || !get("proposal").isEmpty()
                || !get("tyre").isEmpty()
                || !get("wheelbase").isEmpty();
    }

    /** @throws Malformed naming every field that cannot be read */
    UnderlayOrder order() {
        List<FieldError> errors = new ArrayList<>();
        if (!get("segment").isEmpty() && !get("proposal").isEmpty()) {
            errors.add(new FieldError("proposal", "Choose a segment or a proposal, not both."));
        }
        UnderlayOrder order = new UnderlayOrder(
                get("segment").isEmpty() ? null : get("segment"),
                proposal(errors),
                tyre(errors),
                wheelbase(errors),
                points(errors),
                paper(errors),
                denominator(errors),
                !get(OUTLINE).isEmpty(),
                title(errors));
        if (!errors.isEmpty()) {
            throw new Malformed(errors.get(0).message(), errors);
        }
        return order;
    }

    private @Nullable Long proposal(List<FieldError> errors) {
        String text = get("proposal");
        if (!text.isEmpty() && !text.matches("[0-9]{1,18}")) {
            errors.add(new FieldError("proposal", "A proposal is named by its number, not " + shown(text) + "."));
            return null;
        }
        return text.isEmpty() ? null : Long.valueOf(text);
    }

    private @Nullable TyreDesignation tyre(List<FieldError> errors) {
        String text = get("tyre");
        try {
            return text.isEmpty() ? null : TyreDesignation.parse(text);
        } catch (Refusal unreadable) {
            errors.add(new FieldError("tyre", unreadable.detail()));
            return null;
        }
    }

    private @Nullable Double wheelbase(List<FieldError> errors) {
        String text = get("wheelbase");
        if (text.isEmpty()) {
            return null;
        }
        NumberReading reading = LengthText.parse(text, ShownUnits.symbol());
        BigDecimal number = reading.number();
        if (number == null || !Dimension.WHEELBASE.range().contains(number.doubleValue())) {
            errors.add(new FieldError(
                    "wheelbase",
                    (reading.ambiguous() ? reading.fault() + " " : "") + "A wheelbase is a number from "
                            + ShownUnits.current().length().range(Dimension.WHEELBASE.range(), 0) + ", not "
                            + shown(text) + "."));
            return null;
        }
        return number.doubleValue();
    }

    private Map<String, Double> points(List<FieldError> errors) {
        Map<String, Double> points = new LinkedHashMap<>();
        typed.keySet().stream()
                .filter(field -> field.startsWith(POINT))
                .sorted()
                .forEach(field -> {
                    String text = get(field);
                    BigDecimal percent =
                            LengthText.parse(text, ShownUnits.symbol()).number();
                    if (!Framework.MEASURES.contains(field.substring(POINT.length()))) {
                        errors.add(new FieldError(
                                field, "A point is given for one of " + String.join(", ", Framework.MEASURES) + "."));
                    } else if (percent != null && percent.signum() >= 0 && percent.compareTo(HUNDRED) <= 0) {
                        points.put(field.substring(POINT.length()), percent.doubleValue() / 100);
                    } else if (!text.isEmpty()) {
                        errors.add(new FieldError(
                                field,
                                "A point of a band is a number from 0 to 100 per cent, not " + shown(text) + "."));
                    }
                });
        return points;
    }

    private PaperSize paper(List<FieldError> errors) {
        String text = get("paper").isEmpty() ? PaperSize.A3.key() : get("paper");
        return PaperSize.ofKey(text).orElseGet(() -> {
            errors.add(new FieldError("paper", "Paper is one of " + PaperSize.keys() + ", not " + shown(text) + "."));
            return PaperSize.A3;
        });
    }

    private @Nullable Integer denominator(List<FieldError> errors) {
        String text = get("scale");
        if (text.isEmpty() || text.equals(FIT)) {
            return null;
        }
        String number = text.startsWith("1:") ? text.substring(2) : text;
        if (number.matches("[0-9]{1,2}") && UnderlayOrder.DENOMINATORS.contains(Integer.valueOf(number))) {
            return Integer.valueOf(number);
        }
        errors.add(new FieldError(
                "scale",
                "A scale is 1, 2, 4, 5, 8, 10, 20 or 40, for 1:1 and so on, or fit, not " + shown(text) + "."));
        return null;
    }

    private String title(List<FieldError> errors) {
        String text = get("title");
        if (text.length() > UnderlayOrder.MOST_TITLE) {
            errors.add(new FieldError(
                    "title",
                    "A title has at most " + UnderlayOrder.MOST_TITLE + " characters, not " + text.length() + "."));
        }
        return text;
    }

    private static String shown(String text) {
        return '"' + (text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "\u2026" : text) + '"';
    }
}
