package studio.stancebook.band;

import studio.stancebook.problem.Impossible;

/** The class gives no band by the method asked for. */
public final class ImpossibleBand extends Impossible {

    /** @param explanation why, and what would be needed */
    public ImpossibleBand(String explanation) {
        super(explanation);
    }
}
