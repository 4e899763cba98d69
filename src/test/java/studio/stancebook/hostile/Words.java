package studio.stancebook.hostile;

import java.util.List;

/**
 * Words that mean something in the studio at hand.
 *
 * @param segments keys of classes there are
 * @param measures keys of measures there are
 */
record Words(List<String> segments, List<String> measures) {

    private static final List<String> METHODS =
            List.of("rule", "percentile", "tolerance", "distribution-free", "robust");
    private static final List<String> STAGES = List.of("draft", "for-review", "agreed", "shelved");
    private static final List<String> ORIGINS = List.of("specification", "measured", "drawing", "derived");
    private static final List<String> ROLES = List.of("lead", "designer", "tutor", "learner", "viewer");

    /** Something that is accepted under a name, if chance is kind. */
    String fitting(String name, Chance chance) {
        if (chance.oneIn(6)) {
            return HostileText.any(chance);
        }
        return switch (name) {
            case "segment" -> chance.of(segments);
            case "measure" -> chance.of(measures);
            case "key" -> chance.of(chance.of(segments), chance.of(measures), "key-" + chance.below(100_000));
            case "value" -> chance.of("wheelbase", "cowl", "overallHeight", chance.of(measures));
            case "method" -> chance.of(METHODS);
            case "stage" -> chance.of(STAGES);
            case "origin" -> chance.of(ORIGINS);
            case "role" -> chance.of(ROLES);
            case "email" -> "somebody-" + chance.below(1_000_000) + "@studio.example";
            case "password" -> "a long enough password " + chance.below(1_000);
            case "designation" -> chance.of("265/70R17", "P225/60R16", "31x10.50R15", "265/70R17 115T");
            case "format" -> chance.of("csv", "xlsx", "json", "pdf");
            case "quantileType" -> Integer.toString(chance.below(11));
            case "mapping" -> chance.of("{\"a\":{\"field\":\"name\"}}", "{}", "[]", "{\"a\":null}");
            default -> "Word " + chance.below(1_000_000);
        };
    }
}
