package studio.stancebook.exchange.mapping;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Dimension;

/**
 * The words and codes by which headings name what they hold: our own names and labels, the codes of SAE J1100, and other
 * words of the trade (common practice, no source), spelled out and in any order. What has more than one meaning is not here: "type", "weight", "height"
 * of a seat, W101 and W102, which changed their meaning between editions, and slopes without their reference.
 */
final class Vocabulary {

    private static final Set<Dimension> AMBIGUOUS_CODES = Set.of(Dimension.FRONT_TRACK, Dimension.REAR_TRACK);
    private static final Set<Dimension> REFERENCE_NEEDED = Set.of(Dimension.SCREEN_ANGLE, Dimension.BACKLIGHT_ANGLE);

    private static final Map<String, Target> PHRASES = new HashMap<>();
    private static final Map<String, Target> CODES = new HashMap<>();

    static {
        Targets.all().forEach(target -> phrase((target.name() + " " + target.part()).strip(), target));
        for (Dimension dimension : Dimension.values()) {
            phrase(dimension.label(), Target.OfScalar.of(dimension));
            if (!dimension.code().isEmpty() && !AMBIGUOUS_CODES.contains(dimension)) {
                CODES.put(dimension.code().toLowerCase(Locale.ROOT), Target.OfScalar.of(dimension));
            }
        }
        fields();
        lengths();
        heightsAndAngles();
        tyres();
    }

    private Vocabulary() {}

    private static void fields() {
        also(
                "field:name",
                "vehicle",
                "vehicle name",
                "vehicle model",
                "package",
                "package name",
                "model",
                "model name");
        also("field:segment", "class", "vehicle class", "vehicle segment", "segment key");
        also("field:modelYear", "year", "vehicle year", "my");
    }

    private static void lengths() {
        also("dimension:wheelbase", "wheel base");
        also("dimension:overallLength", "length", "vehicle length", "oal");
        also("dimension:overallWidth", "width", "vehicle width", "oaw");
        also("dimension:frontOverhang", "foh");
        also("dimension:rearOverhang", "roh");
        also("dimension:frontTrack", "front track width");
        also("dimension:rearTrack", "rear track width");
        also("dimension:dashToAxle", "dash to front axle");
    }

    private static void heightsAndAngles() {
        also("dimension:overallHeight", "height", "vehicle height", "oah");
        also("dimension:groundClearance", "minimum ground clearance", "running clearance");
        also("dimension:frontAxleClearance", "clearance under front axle");
        also("dimension:rearAxleClearance", "clearance under rear axle");
        also("dimension:approachAngle", "approach", "angle of approach");
        also("dimension:departureAngle", "departure", "angle of departure");
        also("dimension:rampAngle", "ramp", "breakover angle", "ramp breakover angle", "ramp breakover", "breakover");
        also("dimension:kerbMass", "kerb weight");
    }

    private static void tyres() {
        also("dimension:tyre", "tyre size");
        also("dimension:frontTyre", "front tyre size");
        also("dimension:rearTyre", "rear tyre size");
        also("dimension:tyreDiameter", "tyre overall diameter");
        also("dimension:frontTyreDiameter", "front tyre overall diameter");
        also("dimension:rearTyreDiameter", "rear tyre overall diameter");
        also("dimension:tyre:rim", "rim", "rim size", "rim code");
    }

    private static void also(String id, String... phrases) {
        Target target = Targets.ofId(id).orElseThrow();
        for (String phrase : phrases) {
            PHRASES.put(key(HeadingWords.of(phrase)), target);
        }
    }

    private static void phrase(String words, Target target) {
        PHRASES.putIfAbsent(key(HeadingWords.of(words)), target);
    }

    private static String key(HeadingWords heading) {
        return HeadingAbbreviations.spelledOut(heading.words());
    }

    /** The target that words name; empty when they are unknown or a code contradicts them. */
    static Optional<Target> target(HeadingWords heading) {
        if (HeadingAbbreviations.unclear(heading)) {
            return Optional.empty();
        }
        for (int i = 0; i < heading.words().size(); i++) {
            Target coded = CODES.get(heading.words().get(i));
            if (coded != null) {
                HeadingWords rest = heading.without(i);
                Target named = PHRASES.get(key(rest));
                boolean agrees = rest.words().isEmpty() || (named != null && named.equals(coded));
                return agrees ? Optional.of(coded) : Optional.empty();
            }
        }
        return Optional.ofNullable(PHRASES.get(key(heading))).filter(target -> isPlain(target, heading));
    }

    /** "Windscreen angle" alone does not say from where; our own name and label do. */
    private static boolean isPlain(@Nullable Target target, HeadingWords heading) {
        boolean slope = target instanceof Target.OfScalar scalar
                && scalar.dimensions().stream().anyMatch(REFERENCE_NEEDED::contains);
        return !slope || heading.unit() == ColumnUnit.DEG || heading.phrase().contains("horizontal");
    }
}
