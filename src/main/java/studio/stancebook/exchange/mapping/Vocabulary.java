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
 * words of the trade (common practice, no source). What has more than one meaning is not here: "type", "weight", "height"
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
        also("field:name", "vehicle", "vehicle name", "package", "package name", "model name");
        also("field:segment", "class", "vehicle class", "segment key");
        also("field:modelYear", "year", "my");
    }

    private static void lengths() {
        also("dimension:wheelbase", "wheel base", "wb");
        also("dimension:overallLength", "length", "vehicle length", "oal");
        also("dimension:overallWidth", "width", "vehicle width", "oaw");
        also("dimension:frontOverhang", "overhang front", "foh");
        also("dimension:rearOverhang", "overhang rear", "roh");
        also("dimension:frontTrack", "track front", "front track width");
        also("dimension:rearTrack", "track rear", "rear track width");
        also("dimension:dashToAxle", "dash to front axle");
    }

    private static void heightsAndAngles() {
        also("dimension:overallHeight", "height", "vehicle height", "oah");
        also("dimension:groundClearance", "minimum ground clearance", "running clearance");
        also("dimension:frontAxleClearance", "clearance under front axle");
        also("dimension:rearAxleClearance", "clearance under rear axle");
        also("dimension:approachAngle", "approach", "angle of approach");
        also("dimension:departureAngle", "departure", "angle of departure");
        also("dimension:rampAngle", "ramp", "breakover angle", "ramp breakover angle", "breakover");
        also("dimension:kerbMass", "curb mass", "kerb weight", "curb weight");
    }

    private static void tyres() {
        also("dimension:tyre", "tyres", "tire", "tires", "tyre size", "tire size");
        also("dimension:frontTyre", "front tire", "front tyres", "front tires", "tyre front", "tire front");
        also("dimension:rearTyre", "rear tire", "rear tyres", "rear tires", "tyre rear", "tire rear");
        also("dimension:tyreDiameter", "tire diameter", "tyre overall diameter", "tire overall diameter");
        also("dimension:tyre:rim", "rim", "rim size", "rim code", "tyre rim", "tire rim");
    }

    private static void also(String id, String... phrases) {
        Target target = Targets.ofId(id).orElseThrow();
        for (String phrase : phrases) {
            PHRASES.put(phrase, target);
        }
    }

    private static void phrase(String words, Target target) {
        PHRASES.putIfAbsent(HeadingWords.of(words).phrase(), target);
    }

    /** The target that words name; empty when they are unknown or a code contradicts them. */
    static Optional<Target> target(HeadingWords heading) {
        for (int i = 0; i < heading.words().size(); i++) {
            Target coded = CODES.get(heading.words().get(i));
            if (coded != null) {
                HeadingWords rest = heading.without(i);
                Target named = PHRASES.get(rest.phrase());
                boolean agrees = rest.words().isEmpty() || (named != null && named.equals(coded));
                return agrees ? Optional.of(coded) : Optional.empty();
            }
        }
        return Optional.ofNullable(PHRASES.get(heading.phrase())).filter(target -> isPlain(target, heading));
    }

    /** "Windscreen angle" alone does not say from where; our own name and label do. */
    private static boolean isPlain(@Nullable Target target, HeadingWords heading) {
        boolean slope = target instanceof Target.OfScalar scalar
                && scalar.dimensions().stream().anyMatch(REFERENCE_NEEDED::contains);
        return !slope || heading.unit() == ColumnUnit.DEG || heading.phrase().contains("horizontal");
    }
}
