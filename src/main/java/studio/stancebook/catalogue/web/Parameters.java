package studio.stancebook.catalogue.web;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageListParameters;
import studio.stancebook.classes.ClassFilter;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Malformed;
import studio.stancebook.statistics.QuantileType;

/** Parameters of requests as values, or a refusal that says what is accepted. */
final class Parameters {

    private Parameters() {}

    static QuantileType quantileType(String text) {
        return switch (text.strip()) {
            case "6" -> QuantileType.TYPE_6;
            case "7" -> QuantileType.TYPE_7;
            case "8" -> QuantileType.TYPE_8;
            default ->
                throw Malformed.ofField(
                        "quantileType", "The quantile types are 6, 7 and 8, not \"" + shown(text) + "\".");
        };
    }

    static ClassFilter classFilter(
            @Nullable Integer fromYear, @Nullable Integer toYear, @Nullable List<String> origins) {
        Set<Origin> taken = EnumSet.noneOf(Origin.class);
        (origins == null ? List.<String>of() : origins)
                .stream().filter(key -> !key.isBlank()).map(Parameters::origin).forEach(taken::add);
        return new ClassFilter(fromYear, toYear, taken.isEmpty() ? EnumSet.allOf(Origin.class) : taken);
    }

    static Origin origin(String key) {
        return Origin.ofKey(key)
                .orElseThrow(() -> Malformed.ofField(
                        "origin", "\"" + shown(key) + "\" is no origin: it is one of " + origins() + "."));
    }

    /** The names of all origins. */
    static String origins() {
        return Arrays.stream(Origin.values()).map(Origin::key).collect(Collectors.joining(", "));
    }

    static CatalogueFilter filter(PackageFilterParameters asked) {
        return new PackageListParameters(
                        asked.q(),
                        asked.segment(),
                        asked.fromYear(),
                        asked.toYear(),
                        asked.origin(),
                        asked.measure(),
                        asked.min(),
                        asked.max())
                .filter();
    }

    static String shown(String text) {
        String line = text.replaceAll("\\p{Cntrl}", " ");
        return line.length() <= 40 ? line : line.substring(0, 40) + "…";
    }
}
