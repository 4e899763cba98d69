package studio.stancebook.demo;

import java.util.ArrayList;
import java.util.List;
import studio.stancebook.dimension.DimensionSet;

/** The vehicles of the demo studio: the same on every machine. */
public final class InventedCatalogue {

    /** How many vehicles a class has. */
    public static final int PER_CLASS = 21;

    private static final long SEED = 20_240_611;
    private static final int MOST_DRAFTS = 400;

    private InventedCatalogue() {}

    /** All vehicles, class by class. */
    public static List<InventedVehicle> vehicles() {
        Chance chance = new Chance(SEED);
        List<InventedVehicle> vehicles = new ArrayList<>();
        for (Archetype type : Archetypes.all()) {
            for (int i = 0; i < PER_CLASS; i++) {
                Fitment tyres = type.fitments().get(i % type.fitments().size());
                Skeleton skeleton = sound(type, tyres, chance);
                int year = 2008 + chance.below(17);
                vehicles.add(new InventedVehicle(
                        Names.of(vehicles.size()),
                        type.segment(),
                        year,
                        new DimensionSampler(skeleton, chance).record(i % 2 == 0)));
            }
        }
        return vehicles;
    }

    /** The vehicle in the very middle of a class, which is not in the catalogue. */
    static DimensionSet typical(String segment) {
        Archetype type = Archetypes.all().stream()
                .filter(one -> one.segment().equals(segment))
                .findFirst()
                .orElseThrow();
        Chance none = Chance.none();
        Fitment tyres = type.fitments().get(type.fitments().size() / 2);
        return new DimensionSampler(Skeleton.drawn(type, tyres, none), none).record(true);
    }

    private static Skeleton sound(Archetype type, Fitment tyres, Chance chance) {
        for (int draft = 0; draft < MOST_DRAFTS; draft++) {
            Skeleton skeleton = Skeleton.drawn(type, tyres, chance);
            if (skeleton.standsTogether()) {
                return skeleton;
            }
        }
        throw new IllegalStateException("The traits of " + type.segment() + " do not go together");
    }
}
