package studio.stancebook.catalogue.web;

import org.jspecify.annotations.Nullable;

/**
 * What packages are looked for by, as parameters of a request.
 *
 * @param q part of the name
 * @param measure the key of a measure that has to be known
 * @param min least value of the measure
 * @param max most value of the measure
 */
record PackageFilterParameters(
        @Nullable String q,
        @Nullable String segment,
        @Nullable Integer fromYear,
        @Nullable Integer toYear,
        @Nullable String origin,
        @Nullable String measure,
        @Nullable Double min,
        @Nullable Double max) {}
