package studio.stancebook.band.internal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandSetting;
import studio.stancebook.classes.ClassFilter;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Impossible;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.QuantileType;

/**
 * A band's setting as it is sent and kept: the method by name and its numbers, those of other methods being null.
 *
 * @param method rule, percentile, tolerance, distribution-free, robust, or none to withdraw the band
 * @param lower of a rule; null leaves that side open
 * @param upper of a rule; null leaves that side open
 * @param lowerQuantile of a percentile band, 0 to 1
 * @param upperQuantile of a percentile band, 0 to 1
 * @param quantileType of a percentile band: 6, 7 or 8; null for 7
 * @param content of a tolerance or distribution-free band, between 0 and 1
 * @param confidence of a tolerance or distribution-free band, between 0 and 1
 * @param k of a robust band
 * @param fromYear first model year that counts; null for no limit
 * @param toYear last model year that counts; null for no limit
 * @param origins the origins that count; null for all
 * @param reason why
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record WrittenSetting(
        @Nullable String method,
        @Nullable Double lower,
        @Nullable Double upper,
        @Nullable Double lowerQuantile,
        @Nullable Double upperQuantile,
        @Nullable Integer quantileType,
        @Nullable Double content,
        @Nullable Double confidence,
        @Nullable Double k,
        @Nullable Integer fromYear,
        @Nullable Integer toYear,
        @Nullable List<String> origins,
        @Nullable String reason) {

    /** The name that withdraws a band. */
    public static final String NONE = "none";

    private static final String METHODS = "rule, percentile, tolerance, distribution-free, robust or none";

    /** A version without a band. */
    static WrittenSetting none() {
        return new WrittenSetting(NONE, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    /** What a version of a band says of itself; can be sent to set the same again. */
    public static WrittenSetting of(Band band) {
        BandSetting setting = band.setting();
        return setting == null ? none() : of(setting);
    }

    /** The written form; the reason is kept apart. */
    static WrittenSetting of(BandSetting setting) {
        BandMethod method = setting.method();
        if (method instanceof BandMethod.Percentile percentile) {
            return new Numbers(setting)
                    .quantiles(
                            percentile.lowerQuantile(),
                            percentile.upperQuantile(),
                            percentile.type().number());
        }
        if (method instanceof BandMethod.Tolerance tolerance) {
            return new Numbers(setting).shares(tolerance.content(), tolerance.confidence());
        }
        if (method instanceof BandMethod.DistributionFree free) {
            return new Numbers(setting).shares(free.content(), free.confidence());
        }
        if (method instanceof BandMethod.Robust robust) {
            return new Numbers(setting).factor(robust.k());
        }
        BandMethod.Rule rule = (BandMethod.Rule) method;
        return new Numbers(setting).limits(finite(rule.lower()), finite(rule.upper()));
    }

    /** Writes the numbers of one method, all others being null. */
    private record Numbers(BandSetting setting) {

        WrittenSetting limits(@Nullable Double lower, @Nullable Double upper) {
            return written(lower, upper, null, null, null, null, null, null);
        }

        WrittenSetting quantiles(double lower, double upper, int type) {
            return written(null, null, lower, upper, type, null, null, null);
        }

        WrittenSetting shares(double content, double confidence) {
            return written(null, null, null, null, null, content, confidence, null);
        }

        WrittenSetting factor(double k) {
            return written(null, null, null, null, null, null, null, k);
        }

        private WrittenSetting written(
                @Nullable Double lower,
                @Nullable Double upper,
                @Nullable Double lowerQuantile,
                @Nullable Double upperQuantile,
                @Nullable Integer quantileType,
                @Nullable Double content,
                @Nullable Double confidence,
                @Nullable Double k) {
            ClassFilter filter = setting.filter();
            return new WrittenSetting(
                    setting.method().key(),
                    lower,
                    upper,
                    lowerQuantile,
                    upperQuantile,
                    quantileType,
                    content,
                    confidence,
                    k,
                    filter.fromYear(),
                    filter.toYear(),
                    origins(filter),
                    null);
        }
    }

    private static @Nullable Double finite(double limit) {
        return Double.isInfinite(limit) ? null : limit;
    }

    private static @Nullable List<String> origins(ClassFilter filter) {
        return filter.origins().size() == Origin.values().length
                ? null
                : filter.origins().stream().sorted().map(Origin::key).toList();
    }

    /** The name of the method, empty when none was given. */
    public String methodKey() {
        return method == null ? "" : method;
    }

    /** True when it withdraws the band. */
    public boolean withdraws() {
        return NONE.equals(method);
    }

    /** The reason without blanks around it; empty when there is none. */
    public String reasonText() {
        return reason == null ? "" : reason.strip();
    }

    /**
     * The setting, the reason of a rule being {@link #reasonText()}.
     *
     * @throws Impossible naming the field that cannot be
     */
    public BandSetting setting() {
        return setting(reasonText());
    }

    BandSetting setting(String ruleReason) {
        BandMethod asked = method(ruleReason);
        return asked instanceof BandMethod.Rule
                ? BandSetting.of(asked)
                : new BandSetting(asked, new ClassFilter(fromYear, toYear, originSet()));
    }

    private BandMethod method(String ruleReason) {
        return switch (method == null ? "" : method) {
            case "rule" -> BandMethod.Rule.of(lower, upper, ruleReason);
            case "percentile" ->
                new BandMethod.Percentile(
                        needed("lowerQuantile", lowerQuantile), needed("upperQuantile", upperQuantile), type());
            case "tolerance" -> new BandMethod.Tolerance(needed("content", content), needed("confidence", confidence));
            case "distribution-free" ->
                new BandMethod.DistributionFree(needed("content", content), needed("confidence", confidence));
            case "robust" -> new BandMethod.Robust(needed("k", k));
            default ->
                throw Impossible.ofField(
                        "method",
                        (method == null ? "method is missing" : "There is no method " + shown(method)) + "; it is "
                                + METHODS + ".");
        };
    }

    private double needed(String field, @Nullable Double value) {
        if (value == null) {
            throw Impossible.ofField(field, "A band of the method " + method + " needs " + field + ".");
        }
        return value;
    }

    private QuantileType type() {
        int number = quantileType == null ? QuantileType.TYPE_7.number() : quantileType;
        return Arrays.stream(QuantileType.values())
                .filter(type -> type.number() == number)
                .findFirst()
                .orElseThrow(() -> Impossible.ofField(
                        "quantileType", "quantileType is " + number + "; the types 6, 7 and 8 can be chosen."));
    }

    private Set<Origin> originSet() {
        if (origins == null) {
            return EnumSet.allOf(Origin.class);
        }
        Set<Origin> set = EnumSet.noneOf(Origin.class);
        origins.forEach(key -> set.add(Origin.ofKey(key)
                .orElseThrow(() ->
                        Impossible.ofField("origins", shown(key) + " is no origin; there are " + originKeys() + "."))));
        if (set.isEmpty()) {
            throw Impossible.ofField(
                    "origins", "Without any origin there is no class; there are " + originKeys() + ".");
        }
        return set;
    }

    private static String originKeys() {
        return Arrays.stream(Origin.values()).map(Origin::key).collect(Collectors.joining(", "));
    }

    private static String shown(String text) {
        return "\"" + (text.length() <= 40 ? text : text.substring(0, 40) + "…") + "\"";
    }
}
