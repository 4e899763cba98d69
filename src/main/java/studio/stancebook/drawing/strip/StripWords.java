package studio.stancebook.drawing.strip;

/**
 * The words of a strip.
 *
 * @param value with its unit; a dash where there is none
 * @param lower the figure at the lower edge; empty when open
 * @param lowerAt x of its end, from 0 to 1000
 * @param upper the figure at the upper edge; empty when open
 * @param upperAt x of its beginning, from 0 to 1000
 * @param spread two standard uncertainties; empty without a value
 * @param median of the class; empty where there is none
 * @param description everything in one sentence, for those who do not see it
 */
public record StripWords(
        String value,
        String lower,
        double lowerAt,
        String upper,
        double upperAt,
        String spread,
        String median,
        String description) {}
