package studio.stancebook.band.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Band;
import studio.stancebook.band.internal.WrittenSetting;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;

/**
 * The form for a band as typed. Shares are typed in percent.
 *
 * @param origins keys of the origins that are ticked; null when none is
 * @param version of the band that the form was filled from, 0 when there was none
 */
record BandForm(
        @Nullable String method,
        @Nullable String lower,
        @Nullable String upper,
        @Nullable String lowerQuantile,
        @Nullable String upperQuantile,
        @Nullable String quantileType,
        @Nullable String content,
        @Nullable String confidence,
        @Nullable String k,
        @Nullable String fromYear,
        @Nullable String toYear,
        @Nullable List<String> origins,
        @Nullable String reason,
        @Nullable Integer version) {

    /** The methods that a band can be set by, in the order in which they are offered. */
    static final List<String> METHODS = List.of("percentile", "tolerance", "distribution-free", "robust", "rule");

    private static final List<String> ALL_ORIGINS =
            Arrays.stream(Origin.values()).map(Origin::key).toList();

    /** What is proposed for a method: the numbers of the present band where it is of that method. */
    static BandForm of(String method, @Nullable Band band) {
        int version = band == null ? 0 : band.version();
        WrittenSetting written = band == null ? null : WrittenSetting.of(band);
        return written != null && band != null && written.methodKey().equals(method)
                ? filled(written, band.reason(), version)
                : new BandForm(method, "", "", "10", "90", "7", "90", "95", "2.5", "", "", ALL_ORIGINS, "", version);
    }

    private static BandForm filled(WrittenSetting w, String reason, int version) {
        return new BandForm(
                w.method(),
                TypedNumbers.text(w.lower()),
                TypedNumbers.text(w.upper()),
                TypedNumbers.percent(w.lowerQuantile()),
                TypedNumbers.percent(w.upperQuantile()),
                TypedNumbers.text(w.quantileType()),
                TypedNumbers.percent(w.content()),
                TypedNumbers.percent(w.confidence()),
                TypedNumbers.text(w.k()),
                TypedNumbers.text(w.fromYear()),
                TypedNumbers.text(w.toYear()),
                w.origins() == null ? ALL_ORIGINS : w.origins(),
                reason,
                version);
    }

    /** The same form, for the first method when it names none that there is. */
    BandForm known() {
        return METHODS.contains(Objects.requireNonNullElse(method, "")) ? this : with(METHODS.get(0), version);
    }

    BandForm atVersion(int newest) {
        return with(method, newest);
    }

    private BandForm with(@Nullable String otherMethod, @Nullable Integer otherVersion) {
        return new BandForm(
                otherMethod,
                lower,
                upper,
                lowerQuantile,
                upperQuantile,
                quantileType,
                content,
                confidence,
                k,
                fromYear,
                toYear,
                origins,
                reason,
                otherVersion);
    }

    /** Whether the method asks for content and confidence; public because the page asks. */
    public boolean asksForShares() {
        return "tolerance".equals(method) || "distribution-free".equals(method);
    }

    /** Whether a part of the class is left out; public because the page asks. */
    public boolean filters() {
        boolean years = !Objects.requireNonNullElse(fromYear, "").isBlank()
                || !Objects.requireNonNullElse(toYear, "").isBlank();
        return years || originsTaken() != null;
    }

    /** The version expected; null when there was no band. */
    @Nullable
    ExpectedVersion expected() {
        return version == null || version == 0 ? null : new ExpectedVersion(version);
    }

    /** Whether an origin is ticked; public because the page asks. */
    public boolean takes(String origin) {
        return origins != null && origins.contains(origin);
    }

    /** @throws Impossible naming every number that cannot be read */
    WrittenSetting written() {
        List<FieldError> errors = new ArrayList<>();
        TypedNumbers typed = new TypedNumbers(errors);
        WrittenSetting written = new WrittenSetting(
                method,
                typed.number("lower", lower),
                typed.number("upper", upper),
                typed.share("lowerQuantile", lowerQuantile),
                typed.share("upperQuantile", upperQuantile),
                typed.whole("quantileType", quantileType),
                typed.share("content", content),
                typed.share("confidence", confidence),
                typed.number("k", k),
                typed.whole("fromYear", fromYear),
                typed.whole("toYear", toYear),
                originsTaken(),
                reason);
        if (!errors.isEmpty()) {
            throw new Impossible(errors.get(0).message(), errors);
        }
        return written;
    }

    /** All of them are as good as no choice; a rule does not look at the class, and its form does not ask. */
    private @Nullable List<String> originsTaken() {
        if ("rule".equals(method)) {
            return null;
        }
        List<String> ticked = origins == null ? List.of() : origins;
        return ticked.containsAll(ALL_ORIGINS) ? null : ticked;
    }
}
