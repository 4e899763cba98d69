package studio.stancebook.band.internal;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** What is told of a band that somebody set or withdrew. */
public final class BandEvents {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};

    private BandEvents() {}

    /** The new version against the one before. */
    public static ActivityEvent of(Optional<Band> before, Band now) {
        return ActivityEvent.of(
                now.inForce() ? "set" : "withdrawn",
                "band",
                now.segment() + "/" + now.measure(),
                now.measure() + " in " + now.segment(),
                before.map(BandEvents::facts).orElseGet(FieldValues::none),
                facts(now));
    }

    private static FieldValues facts(Band band) {
        BandRange range = band.range();
        return FieldValues.of("version", band.version())
                .and(JSON.convertValue(WrittenSetting.of(band), TREE))
                .and("lower", range == null ? null : edge(range.limits().lower()))
                .and("upper", range == null ? null : edge(range.limits().upper()))
                .and("n", range == null ? null : range.n())
                .and("classRevision", band.classRevision())
                .and("reason", band.reason());
    }

    private static @Nullable Double edge(double end) {
        return Double.isInfinite(end) ? null : end;
    }
}
