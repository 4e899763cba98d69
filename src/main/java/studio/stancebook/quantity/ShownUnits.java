package studio.stancebook.quantity;

import java.util.function.Supplier;

/**
 * How lengths and leaning angles are written for the person whose request a thread serves. Like the locale, it belongs to the
 * thread: what nobody asks for on a page, such as the API, an import or a backup, is written in mm and from the horizontal.
 *
 * <p>The one way in which a length becomes text on a page. Values are kept and computed in mm and from the horizontal.
 */
public record ShownUnits(LengthUnit length, AngleReference angles) {

    /** Millimetres, and angles from the horizontal. */
    public static final ShownUnits KEPT = new ShownUnits(LengthUnit.MM, AngleReference.HORIZONTAL);

    private static final ThreadLocal<ShownUnits> IN_USE = ThreadLocal.withInitial(() -> KEPT);

    /** Those of the request under way. */
    public static ShownUnits current() {
        return IN_USE.get();
    }

    /** Writes in these units on this thread until {@link #reset}. */
    public void use() {
        IN_USE.set(this);
    }

    /** Writes as kept again. */
    public static void reset() {
        IN_USE.remove();
    }

    /** A length without its unit, at most as many decimals, no trailing zeros; in inches always its hundredths. */
    public static String plain(double mm, int decimals) {
        LengthUnit unit = current().length();
        return unit == LengthUnit.MM || decimals > 2
                ? NumberText.plain(unit.of(mm), unit.decimals(decimals))
                : NumberText.fixed(unit.of(mm), unit.decimals(decimals));
    }

    /** A length without its unit, with exactly as many decimals. */
    public static String fixed(double mm, int decimals) {
        LengthUnit unit = current().length();
        return NumberText.fixed(unit.of(mm), unit.decimals(decimals));
    }

    /** As {@link #fixed}, with a plus sign before a positive number. */
    public static String signed(double mm, int decimals) {
        LengthUnit unit = current().length();
        return NumberText.signed(unit.of(mm), unit.decimals(decimals));
    }

    /** A length as {@link #plain}, with its unit. */
    public static String text(double mm, int decimals) {
        return plain(mm, decimals) + " " + symbol();
    }

    /** A length in a drawing, where a bare number is mm and every other one says its unit. */
    public static String label(double mm, int decimals) {
        return current().length() == LengthUnit.MM ? plain(mm, decimals) : text(mm, decimals);
    }

    /** Something written for no one in particular, to be kept, on the thread of somebody's request. */
    public static <T> T asKept(Supplier<T> writing) {
        ShownUnits units = current();
        KEPT.use();
        try {
            return writing.get();
        } finally {
            units.use();
        }
    }

    /** The symbol of the unit of lengths. */
    public static String symbol() {
        return current().length().symbol();
    }
}
