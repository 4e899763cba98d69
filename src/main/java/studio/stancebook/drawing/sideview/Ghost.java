package studio.stancebook.drawing.sideview;

import studio.stancebook.dimension.DimensionSet;

/**
 * Another vehicle whose silhouette lies behind the drawing.
 *
 * @param name written at the end of its line
 * @param dimensions what it is drawn from
 */
public record Ghost(String name, DimensionSet dimensions) {}
