package studio.stancebook.classes.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Recorded;
import studio.stancebook.exchange.Invented;

class DimensionTextTest {

    private static final Instant THEN = Instant.parse("2026-11-25T10:00:00Z");
    private static final Instant NOW = Instant.parse("2026-11-29T10:00:00Z");

    private final DimensionSet fresh =
            Invented.everything(Origin.DRAWING).markedSince(null, new Recorded(null, "Lead", THEN));

    @Test
    void writesOneMarkWhereAllValuesHaveTheSame() {
        assertThat(DimensionText.writeRecorded(fresh)).hasSizeLessThan(70);
        assertReadBack(fresh);
    }

    @Test
    void writesAMarkForEachValueWhereTheyDiffer() {
        DimensionSet edited = fresh.toBuilder()
                .set(Dimension.KERB_MASS, 1234)
                .build()
                .markedSince(fresh, new Recorded(null, "Other", NOW));

        assertThat(edited.recorded().get("kerbMass").by()).isEqualTo("Other");
        assertThat(edited.recorded().get("wheelbase").by()).isEqualTo("Lead");
        assertReadBack(edited);
    }

    @Test
    void readsWhatWasKeptWithAMarkForEachValue() {
        String recorded = "{\"wheelbase\":{\"by\":\"Lead\",\"at\":\"2026-11-25T10:00:00Z\"}}";

        assertThat(DimensionText.read("{\"wheelbase\":2800}", recorded, Origin.DRAWING)
                        .recorded())
                .hasSize(1)
                .hasEntrySatisfying("wheelbase", mark -> assertThat(mark.at()).isEqualTo(THEN));
        assertThat(DimensionText.read("{\"wheelbase\":2800}", "{}", Origin.DRAWING)
                        .recorded())
                .isEmpty();
    }

    private static void assertReadBack(DimensionSet set) {
        DimensionSet read =
                DimensionText.read(DimensionText.write(set), DimensionText.writeRecorded(set), Origin.DRAWING);

        assertThat(read.recorded()).isEqualTo(set.recorded());
    }
}
