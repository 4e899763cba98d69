package studio.stancebook.exchange.importing;

import studio.stancebook.exchange.table.TextLimit;

/**
 * One value of a package that a row changes.
 *
 * @param key {@code wheelbase}, {@code uncertainties.wheelbase}, {@code origin}, {@code setAside} and the like
 * @param before as it is recorded, shortened; empty where nothing is
 * @param after as the row has it, shortened
 */
public record ValueChange(String key, String before, String after) {

    public ValueChange {
        before = TextLimit.shown(before);
        after = TextLimit.shown(after);
    }
}
