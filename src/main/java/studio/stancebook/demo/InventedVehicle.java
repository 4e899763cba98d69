package studio.stancebook.demo;

import studio.stancebook.dimension.DimensionSet;

/**
 * A vehicle that does not exist.
 *
 * @param name of a bird and a place
 * @param segment key of its class
 * @param modelYear that it pretends to be of
 * @param dimensions what is recorded of it
 */
public record InventedVehicle(String name, String segment, int modelYear, DimensionSet dimensions) {}
