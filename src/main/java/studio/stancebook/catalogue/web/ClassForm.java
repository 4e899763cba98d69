package studio.stancebook.catalogue.web;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.classes.ClassFilter;
import studio.stancebook.problem.Malformed;
import studio.stancebook.statistics.QuantileType;

/** Which part of a class is looked at, and by which quantiles, as typed into the page. */
record ClassForm(
        @Nullable String fromYear,
        @Nullable String toYear,
        @Nullable String origin,
        @Nullable String quantileType) {

    /** Public because the page asks. */
    public String type() {
        return quantileType == null || quantileType.isBlank() ? "7" : quantileType.strip();
    }

    QuantileType quantiles() {
        return Parameters.quantileType(type());
    }

    /** @throws Malformed naming every field that cannot be read */
    ClassFilter filter() {
        CatalogueFilter years = new CatalogueForm(null, null, fromYear, toYear, null, null, null, null, null).filter();
        String key = Objects.requireNonNullElse(origin, "");
        return Parameters.classFilter(years.fromYear(), years.toYear(), List.of(key));
    }
}
