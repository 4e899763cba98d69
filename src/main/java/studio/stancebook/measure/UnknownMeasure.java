package studio.stancebook.measure;

import studio.stancebook.problem.NotFound;

/** There is no measure of this key. */
public final class UnknownMeasure extends NotFound {

    public UnknownMeasure(String key) {
        super("measure", key);
    }
}
