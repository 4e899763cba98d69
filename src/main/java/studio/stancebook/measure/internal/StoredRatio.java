package studio.stancebook.measure.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.StudioRatio;

/** A studio ratio as it is kept. It is never changed: another ratio has another key. */
@Entity
@Table(name = "studio_ratio")
public class StoredRatio {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false, updatable = false)
    private String ratioKey = "";

    @Column(nullable = false, updatable = false)
    private String name = "";

    @Column(nullable = false, updatable = false)
    private String numerator = "";

    @Column(nullable = false, updatable = false)
    private String denominator = "";

    @Column(updatable = false)
    private @Nullable Long addedById;

    @Column(nullable = false, updatable = false)
    private String addedBy = "";

    @Column(nullable = false, updatable = false)
    private Instant addedAt = Instant.EPOCH;

    protected StoredRatio() {}

    public StoredRatio(StudioRatio ratio, Author by, Instant now) {
        ratioKey = ratio.key();
        name = ratio.name();
        numerator = text(ratio.numerator());
        denominator = text(ratio.denominator());
        addedById = by.personId();
        addedBy = by.name();
        addedAt = now;
    }

    /** The ratio as a value. */
    public StudioRatio ratio() {
        return new StudioRatio(ratioKey, name, readings(numerator), readings(denominator));
    }

    private static String text(List<Reading> readings) {
        return readings.stream().map(Reading::key).collect(Collectors.joining(","));
    }

    private static List<Reading> readings(String text) {
        return Arrays.stream(text.split(",", -1))
                .map(key -> Reading.ofKey(key)
                        .orElseThrow(() -> new IllegalStateException("A stored ratio names the reading " + key)))
                .toList();
    }
}
