package studio.stancebook.demo;

import java.util.List;
import java.util.Map;

/**
 * What the vehicles of a class have in common.
 *
 * @param segment the key of the class
 * @param traits by name
 */
record Archetype(String segment, Map<String, Trait> traits) {

    Archetype {
        traits = Map.copyOf(traits);
    }

    /**
     * One property of a class.
     *
     * @param mean in its unit
     * @param spread half the width of what occurs
     * @param sporting how strongly it follows the character, -1 to 1
     */
    record Trait(double mean, double spread, double sporting) {

        double drawn(Chance chance, double character) {
            double own = StrictMath.sqrt(1 - sporting * sporting);
            return mean + spread * (sporting * character + own * chance.bell());
        }
    }

    /** @throws IllegalArgumentException if there is no property of this name */
    Trait trait(String name) {
        Trait trait = traits.get(name);
        if (trait == null) {
            throw new IllegalArgumentException("The class " + segment + " has no " + name);
        }
        return trait;
    }

    /** Sizes that the class wears, from small to large; the rear size where it differs. */
    List<Fitment> fitments() {
        return Fitment.of(segment);
    }
}
