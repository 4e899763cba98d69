package studio.stancebook.statistics;

/** What comes of computing a band: its edges, or why there are none. */
public sealed interface BandOutcome permits BandEdges, NoBandPossible {

    /** How many values the class had. */
    int n();
}
