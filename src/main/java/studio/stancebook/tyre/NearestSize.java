package studio.stancebook.tyre;

/**
 * A tyre size that comes near a wanted diameter.
 *
 * @param designation the size; whether a tyre of it is made is not known
 * @param overallDiameterMm its design diameter by rule
 * @param differenceMm overall diameter - wanted diameter, positive when the tyre is larger
 * @param unusual true where no road tyre has such proportions, see {@link NearestSizes}
 */
public record NearestSize(
        TyreDesignation designation, double overallDiameterMm, double differenceMm, boolean unusual) {}
