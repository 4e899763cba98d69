package studio.stancebook.dimension.reshaping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StretchTest {

    private final Stretch stretch = Stretch.NONE.with(0, 0).with(100, 150).with(200, 250);

    @Test
    void isStraightBetweenItsPlacesAndShiftsBeyondThem() {
        assertThat(stretch.of(-30)).isEqualTo(-30);
        assertThat(stretch.of(0)).isEqualTo(0);
        assertThat(stretch.of(50)).isEqualTo(75);
        assertThat(stretch.of(100)).isEqualTo(150);
        assertThat(stretch.of(150)).isEqualTo(200);
        assertThat(stretch.of(230)).isEqualTo(280);
    }

    @Test
    void leavesOutWhatWouldNotRise() {
        assertThat(stretch.with(300, 250).of(300)).isEqualTo(350);
        assertThat(stretch.with(200, 400).of(200)).isEqualTo(250);
    }

    @Test
    void leavesEverythingWhereItIsWithoutPlaces() {
        assertThat(Stretch.NONE.of(12.5)).isEqualTo(12.5);
    }
}
