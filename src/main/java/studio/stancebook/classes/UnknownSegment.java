package studio.stancebook.classes;

import studio.stancebook.problem.NotFound;

/** There is no segment of this key. */
public final class UnknownSegment extends NotFound {

    public UnknownSegment(String key) {
        super("segment", key);
    }
}
