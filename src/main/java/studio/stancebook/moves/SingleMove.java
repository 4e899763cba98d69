package studio.stancebook.moves;

import studio.stancebook.dimension.Variable;

/**
 * The change of one recorded value that brings a measure exactly to the edge of its band while every other recorded value
 * is held. What is derived from it follows: with an overall length and one overhang recorded, a longer wheelbase
 * shortens the other overhang; with all of them recorded, the set no longer closes, and whoever applies the move must
 * carry it on to the overall length or an overhang.
 *
 * @param variable what changes
 * @param change by how much, in the variable's unit, finite and not zero
 * @param share the size of the change: of the recorded value for a scalar, of the wheelbase for a coordinate or the dash
 *     to axle, which may well be zero; positive
 */
public record SingleMove(Variable variable, double change, double share) {

    public SingleMove {
        if (!Double.isFinite(change) || change == 0 || !(share > 0)) {
            throw new IllegalArgumentException(
                    "A move is finite and not zero, got " + change + " of " + variable + ", share " + share);
        }
    }
}
