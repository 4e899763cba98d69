package studio.stancebook.band.internal;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import studio.stancebook.account.Deed;
import studio.stancebook.account.Facts;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** What is told of a band that somebody set or withdrew. */
public final class BandDeeds {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};

    private BandDeeds() {}

    /** The new version against the one before. */
    public static Deed of(Optional<Band> before, Band now) {
        return Deed.of(
                now.inForce() ? "set" : "withdrawn",
                "band",
                now.segment() + "/" + now.measure(),
                now.measure() + " in " + now.segment(),
                before.map(BandDeeds::facts).orElseGet(Facts::none),
                facts(now));
    }

    private static Facts facts(Band band) {
        BandRange range = band.range();
        return Facts.of("version", band.version())
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
