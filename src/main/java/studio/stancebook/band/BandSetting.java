package studio.stancebook.band;

import studio.stancebook.classes.ClassFilter;
import studio.stancebook.statistics.BandMethod;

/**
 * How a band is found.
 *
 * @param method with its numbers
 * @param filter which part of the class it is computed from; of no account for a rule
 */
public record BandSetting(BandMethod method, ClassFilter filter) {

    /** From the whole class. */
    public static BandSetting of(BandMethod method) {
        return new BandSetting(method, ClassFilter.all());
    }

    /** True when the class has a part in it: for every method but a rule. */
    public boolean computed() {
        return !(method instanceof BandMethod.Rule);
    }
}
