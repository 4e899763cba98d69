package studio.stancebook.band;

import java.time.Clock;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Author;
import studio.stancebook.band.internal.BandComputer;
import studio.stancebook.band.internal.BandEvents;
import studio.stancebook.band.internal.StoredBand;
import studio.stancebook.band.internal.StoredBands;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;
import studio.stancebook.problem.PreconditionRequired;
import studio.stancebook.problem.Stale;
import studio.stancebook.statistics.BandMethod;

/** The bands of all segments, with every version there was; who may set them is the caller's to check. */
@Component
@Transactional
public class Bands {

    /** Most characters of a reason. */
    public static final int MOST_REASON = 500;

    private final StoredBands stored;
    private final BandComputer computer;
    private final Segments segments;
    private final StudioMeasures measures;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    Bands(
            StoredBands stored,
            BandComputer computer,
            Segments segments,
            StudioMeasures measures,
            Clock clock,
            ApplicationEventPublisher events) {
        this.stored = stored;
        this.computer = computer;
        this.segments = segments;
        this.measures = measures;
        this.clock = clock;
        this.events = events;
    }

    /**
     * The newest version for each measure of the studio that ever had a band here, withdrawn ones included, in the order
     * of the registry.
     *
     * @throws studio.stancebook.classes.UnknownSegment if there is no such segment
     */
    @Transactional(readOnly = true)
    public List<Band> newest(String segment) {
        return newest(segments.named(segment));
    }

    private List<Band> newest(SegmentName segment) {
        Map<String, StoredBand> byMeasure = stored.newest(segment.id()).stream()
                .collect(Collectors.toMap(StoredBand::measure, Function.identity()));
        return measures.current().all().stream()
                .flatMap(measure -> Optional.ofNullable(byMeasure.get(measure.key())).stream())
                .map(band -> band.band(segment.key()))
                .toList();
    }

    /** The bands in force, by measure. */
    @Transactional(readOnly = true)
    public Map<String, Band> current(String segment) {
        return current(segments.named(segment));
    }

    /** As {@link #current(String)}, of a segment that was read already. */
    @Transactional(readOnly = true)
    public Map<String, Band> current(SegmentName segment) {
        Map<String, Band> current = new LinkedHashMap<>();
        newest(segment).stream().filter(Band::inForce).forEach(band -> current.put(band.measure(), band));
        return current;
    }

    /** The versions of bands that an assessment was made by, by measure, whatever is in force now. */
    @Transactional(readOnly = true)
    public Map<String, Band> judgedBy(String segment, Assessment assessment) {
        SegmentName named = segments.named(segment);
        return judgedBy(named, assessment, current(named));
    }

    /** As {@link #judgedBy(String, Assessment)}, where the bands of now were read already. */
    @Transactional(readOnly = true)
    public Map<String, Band> judgedBy(SegmentName segment, Assessment assessment, Map<String, Band> current) {
        Map<String, Band> found = new LinkedHashMap<>();
        Map<String, Integer> replaced = new LinkedHashMap<>();
        for (Finding finding : assessment.findings()) {
            AppliedBand applied = finding.band();
            Band now = current.get(finding.measure());
            if (applied != null && now != null && now.version() == applied.version()) {
                found.put(finding.measure(), now);
            } else if (applied != null) {
                replaced.put(finding.measure(), applied.version());
            }
        }
        if (!replaced.isEmpty()) {
            stored.upTo(segment.id(), replaced.keySet(), Collections.max(replaced.values())).stream()
                    .filter(band -> Objects.equals(replaced.get(band.measure()), band.version()))
                    .forEach(band -> found.put(band.measure(), band.band(segment.key())));
        }
        return found;
    }

    /** The bands of one measure that are in force in some segments, by key of the segment. */
    @Transactional(readOnly = true)
    public Map<String, Band> across(List<SegmentName> names, String measure) {
        Map<Long, StoredBand> newest = stored
                .newestOf(measures.current().get(measure).key())
                .stream()
                .collect(Collectors.toMap(StoredBand::segmentId, Function.identity()));
        Map<String, Band> across = new LinkedHashMap<>();
        for (SegmentName segment : names) {
            Optional.ofNullable(newest.get(segment.id()))
                    .map(band -> band.band(segment.key()))
                    .filter(Band::inForce)
                    .ifPresent(band -> across.put(segment.key(), band));
        }
        return across;
    }

    /** What an assessment in this segment takes. */
    @Transactional(readOnly = true)
    public Map<String, AppliedBand> applied(String segment) {
        return applied(current(segment));
    }

    /** What an assessment takes of bands, by measure. */
    public static Map<String, AppliedBand> applied(Map<String, Band> current) {
        Map<String, AppliedBand> applied = new LinkedHashMap<>();
        current.forEach((measure, band) -> {
            AppliedBand taken = band.applied();
            if (taken != null) {
                applied.put(measure, taken);
            }
        });
        return applied;
    }

    /** The newest version; empty when no band was ever set. */
    @Transactional(readOnly = true)
    public Optional<Band> find(String segment, String measure) {
        long segmentId = segments.named(segment).id();
        String key = measures.current().get(measure).key();
        return newestOf(segmentId, key).map(band -> band.band(segment));
    }

    /** @throws NoSuchBand if no band was ever set */
    @Transactional(readOnly = true)
    public Band get(String segment, String measure) {
        return find(segment, measure).orElseThrow(() -> new NoSuchBand(segment, measure));
    }

    /** All versions, newest first; none when no band was ever set. */
    @Transactional(readOnly = true)
    public List<Band> history(String segment, String measure) {
        long segmentId = segments.named(segment).id();
        String key = measures.current().get(measure).key();
        return stored.findBySegmentIdAndMeasureOrderByVersionDesc(segmentId, key).stream()
                .map(band -> band.band(segment))
                .toList();
    }

    /** What a band would be if it were set now; by itself no transaction, which would hold a connection for the class. */
    @Transactional(propagation = Propagation.SUPPORTS, readOnly = true)
    public BandTrial trial(String segment, String measure, BandSetting setting) {
        return computer.trial(segment, measures.current().get(measure).key(), setting);
    }

    /**
     * Sets a band: a new version, computed on the class as it is now.
     *
     * @param reason may be empty, at most {@value #MOST_REASON} characters; a rule has its own
     * @param expected the newest version; null only where there is none
     * @throws ImpossibleBand if the class gives no such band
     * @throws PreconditionRequired if there is a version and none was expected
     * @throws Stale if another version is the newest
     * @throws studio.stancebook.measure.UnknownMeasure if there is no such measure
     * @throws studio.stancebook.classes.UnknownSegment if there is no such segment
     */
    public Band set(
            String segment,
            String measure,
            BandSetting setting,
            String reason,
            @Nullable ExpectedVersion expected,
            Author by) {
        BandTrial trial = trial(segment, measure, setting);
        if (!trial.possible()) {
            throw new ImpossibleBand(trial.explanation());
        }
        return add(
                segment,
                measure,
                expected,
                version -> new Band(
                        segment,
                        measure,
                        version,
                        setting,
                        trial.range(),
                        trial.explanation(),
                        checked(reasonOf(setting, reason)),
                        trial.classRevision(),
                        clock.instant(),
                        by.name()),
                by);
    }

    /**
     * Sets bands where there never was a version: to begin with, many at once. What the class does not give is left out.
     *
     * @param settings by key of the measure
     * @return how many were set
     * @throws Stale if somebody else set one of them at the same moment; then none is set
     */
    public int setWhereNone(String segment, Map<String, BandSetting> settings, String reason, Author by) {
        Set<String> there = newest(segment).stream().map(Band::measure).collect(Collectors.toSet());
        int count = 0;
        for (Map.Entry<String, BandSetting> entry : settings.entrySet()) {
            boolean free = !there.contains(entry.getKey());
            if (free && trial(segment, entry.getKey(), entry.getValue()).possible()) {
                set(segment, entry.getKey(), entry.getValue(), reason, null, by);
                count++;
            }
        }
        return count;
    }

    private static String reasonOf(BandSetting setting, String otherwise) {
        return setting.method() instanceof BandMethod.Rule rule ? rule.reason() : otherwise;
    }

    /**
     * Withdraws a band: a new version that says there is none.
     *
     * @param reason 1 to {@value #MOST_REASON} characters
     * @param expected the newest version; null only where there is none
     */
    public Band withdraw(String segment, String measure, String reason, @Nullable ExpectedVersion expected, Author by) {
        if (reason.isBlank()) {
            throw Impossible.ofField("reason", "reason is missing; a withdrawal says why.");
        }
        long revision = segments.revision(segment);
        String key = measures.current().get(measure).key();
        return add(
                segment,
                key,
                expected,
                version -> new Band(
                        segment,
                        key,
                        version,
                        null,
                        null,
                        "Withdrawn.",
                        checked(reason),
                        revision,
                        clock.instant(),
                        by.name()),
                by);
    }

    private Band add(
            String segment,
            String measure,
            @Nullable ExpectedVersion expected,
            Function<Integer, Band> newVersion,
            Author by) {
        long segmentId = segments.named(segment).id();
        Optional<Band> before = newestOf(segmentId, measure).map(found -> found.band(segment));
        int newest = before.map(Band::version).orElse(0);
        check(newest, expected);
        Band band = newVersion.apply(newest + 1);
        try {
            Band added =
                    stored.saveAndFlush(new StoredBand(segmentId, band, by)).band(segment);
            events.publishEvent(BandEvents.of(before, added));
            return added;
        } catch (DataIntegrityViolationException setMeanwhile) {
            throw new Stale("The band was set by somebody else at the same moment: read it again.");
        }
    }

    private static void check(int newest, @Nullable ExpectedVersion expected) {
        if (expected != null) {
            expected.check(newest, "band");
        } else if (newest > 0) {
            throw new PreconditionRequired("There is a band already, at version " + newest
                    + ": send If-Match with its ETag, so that nobody's change is overwritten.");
        }
    }

    private static String checked(String reason) {
        String text = reason.strip();
        if (!text.isEmpty()) {
            Legible.faultOfLine("a reason", text, MOST_REASON).ifPresent(fault -> {
                throw Impossible.ofField("reason", fault);
            });
        }
        return text;
    }

    private Optional<StoredBand> newestOf(long segmentId, String measure) {
        return stored.findFirstBySegmentIdAndMeasureOrderByVersionDesc(segmentId, measure);
    }
}
