package studio.stancebook.band;

import studio.stancebook.problem.NotFound;

/** No band was ever set for this measure in this segment. */
public final class NoSuchBand extends NotFound {

    public NoSuchBand(String segment, String measure) {
        super("band", measure + " in " + segment);
    }
}
