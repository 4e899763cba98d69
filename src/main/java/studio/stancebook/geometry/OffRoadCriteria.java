package studio.stancebook.geometry;

import static studio.stancebook.geometry.OffRoadQuantity.*;

import java.util.List;

/**
 * The geometric part of a legal definition of an off-road vehicle, as advice to designers: it counts how many of its
 * criteria a side view meets. It is no certificate. What a side view cannot show is listed as not checked, and a licensed
 * body decides on a real vehicle.
 *
 * @param key {@code us-49-cfr-523-5} or {@code eu-m1g}
 * @param source the text and its paragraph
 * @param criteria the criteria, in the order of the text
 * @param needed how many of them must be met
 * @param notCheckedKeys message keys of the conditions that are not checked here
 */
public record OffRoadCriteria(
        String key, String source, List<OffRoadCriterion> criteria, int needed, List<String> notCheckedKeys) {

    /** Message key of the caution that belongs beside every judgement. */
    public static final String CAUTION_KEY = "geometry.off-road.caution";

    private static final String AXLE_CLEARANCES = "axle-clearances";

    private static final OffRoadCriteria UNITED_STATES = new OffRoadCriteria(
            "us-49-cfr-523-5",
            "49 CFR 523.5(b)(2)",
            List.of(
                    OffRoadCriterion.of(APPROACH, 28),
                    OffRoadCriterion.of(RAMP, 14),
                    OffRoadCriterion.of(DEPARTURE, 20),
                    OffRoadCriterion.of(RUNNING_CLEARANCE, 200),
                    new OffRoadCriterion(AXLE_CLEARANCES, List.of(FRONT_AXLE_CLEARANCE, REAR_AXLE_CLEARANCE), 180)),
            4,
            List.of("geometry.off-road.not-checked.us-drive", "geometry.off-road.not-checked.us-state"));

    private static final OffRoadCriteria EUROPEAN_UNION = new OffRoadCriteria(
            "eu-m1g",
            "Regulation (EU) 2018/858 Annex I, category M1G",
            List.of(
                    OffRoadCriterion.of(APPROACH, 25),
                    OffRoadCriterion.of(DEPARTURE, 20),
                    OffRoadCriterion.of(RAMP, 20),
                    OffRoadCriterion.of(FRONT_AXLE_CLEARANCE, 180),
                    OffRoadCriterion.of(REAR_AXLE_CLEARANCE, 180),
                    OffRoadCriterion.of(CLEARANCE_BETWEEN_AXLES, 200)),
            5,
            List.of(
                    "geometry.off-road.not-checked.eu-drive",
                    "geometry.off-road.not-checked.eu-lock",
                    "geometry.off-road.not-checked.eu-gradient",
                    "geometry.off-road.not-checked.eu-state"));

    public OffRoadCriteria {
        criteria = List.copyOf(criteria);
        notCheckedKeys = List.copyOf(notCheckedKeys);
    }

    /** The definitions that there are. */
    public static List<OffRoadCriteria> all() {
        return List.of(UNITED_STATES, EUROPEAN_UNION);
    }

    /** Four of five: an automobile that can be driven off the highway, in the sense of the American text. */
    public static OffRoadCriteria unitedStates() {
        return UNITED_STATES;
    }

    /**
     * Five of six: the off-road passenger car of the European Union. The figures are those of the earlier directives, which
     * the regulation is understood to keep (from memory).
     */
    public static OffRoadCriteria europeanUnion() {
        return EUROPEAN_UNION;
    }

    /** Judges one side view, criterion by criterion. */
    public OffRoadJudgement judge(OffRoadDimensions dimensions) {
        return new OffRoadJudgement(
                this,
                criteria.stream()
                        .map(criterion -> OffRoadJudgement.CriterionResult.of(criterion, dimensions))
                        .toList());
    }
}
