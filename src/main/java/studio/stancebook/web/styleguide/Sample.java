package studio.stancebook.web.styleguide;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.FieldErrors;

/**
 * Invented things for the fragments to show.
 *
 * @param benchmarks one page of a list
 * @param segments what a selection offers
 * @param refused what is wrong with the form that was refused
 * @param conflict what two people changed
 * @param colours names of the custom properties for colours
 * @param verdicts the keys of all verdicts
 */
record Sample(
        Page<Benchmark> benchmarks,
        Map<String, String> segments,
        FieldErrors refused,
        List<FieldConflict> conflict,
        List<String> colours,
        List<String> verdicts) {

    private static final List<Benchmark> ALL = List.of(
            new Benchmark("Curlew long", 2024, "2 995", "3.70", "inside"),
            new Benchmark("Fenland", 2021, "2 680", "3.30", "too-close"),
            new Benchmark("Dunlin 3-door", 2019, "2 362", "2.86", "outside-low"),
            new Benchmark("Dunlin long", 2023, "2 846", "3.41", "inside"),
            new Benchmark("Saltmarsh", 2022, "3 060", "3.98", "outside-high"),
            new Benchmark("Tern", 2026, "2 760", "3.44", "inside"));

    /**
     * One line of the table.
     *
     * @param wheelbase in mm, as written
     * @param spanned wheels between the centres, as written
     * @param verdict a key of the verdict fragment
     */
    record Benchmark(String name, int year, String wheelbase, String spanned, String verdict) {

        public boolean outside() {
            return verdict.startsWith("outside");
        }
    }

    /** One field in both versions, as the conflict fragment wants it. */
    record FieldConflict(String name, String label, String yours, String theirs) {

        public boolean differs() {
            return !yours.equals(theirs);
        }
    }

    static Sample ofPage(Pageable wanted) {
        return new Sample(
                page(wanted),
                offered(),
                new FieldErrors(List.of(
                        new FieldError("wrong-name", "Give the package a name of 1 to 120 characters."),
                        new FieldError(
                                "wrong-wheelbase",
                                "27600 is not accepted as wheelbase: it takes 1000 to 6000 mm, such as 2760."))),
                List.of(
                        new FieldConflict("wheelbase", "Wheelbase, mm", "2760", "2755"),
                        new FieldConflict("overallHeight", "Overall height, mm", "1848", "1848"),
                        new FieldConflict(
                                "note", "Note", "Screen stands 1.4\u00b0 more upright", "Cowl moved 52 mm forward")),
                List.of(
                        "film",
                        "paper",
                        "grid",
                        "grid-five",
                        "band",
                        "line",
                        "ghost",
                        "edge",
                        "soft",
                        "ink",
                        "tape",
                        "red",
                        "blue"),
                List.of("inside", "outside-low", "outside-high", "too-close", "not-measurable", "no-band"));
    }

    private static Page<Benchmark> page(Pageable wanted) {
        List<Benchmark> sorted = ALL.stream().sorted(order(wanted)).toList();
        int from = (int) Math.min(wanted.getOffset(), sorted.size());
        int to = Math.min(from + wanted.getPageSize(), sorted.size());
        return new PageImpl<>(sorted.subList(from, to), wanted, sorted.size());
    }

    private static Comparator<Benchmark> order(Pageable wanted) {
        return wanted.getSort().stream()
                .map(one -> one.isAscending()
                        ? by(one.getProperty())
                        : by(one.getProperty()).reversed())
                .reduce(Comparator::thenComparing)
                .orElseGet(() -> by("name"));
    }

    private static Comparator<Benchmark> by(String property) {
        return switch (property) {
            case "year" -> Comparator.comparing(Benchmark::year);
            case "wheelbase" -> Comparator.comparing(Benchmark::wheelbase);
            default -> Comparator.comparing(Benchmark::name);
        };
    }

    private static Map<String, String> offered() {
        Map<String, String> segments = new LinkedHashMap<>();
        segments.put("offroad-suv", "Off-road SUV");
        segments.put("crossover", "Crossover");
        segments.put("wagon", "Wagon");
        return segments;
    }
}
