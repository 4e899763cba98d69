package studio.stancebook.band.web;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.BandTrial;
import studio.stancebook.band.Bands;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.measure.Measure;

/** Finds out whether a band would be another on the class as it is now. */
@Component
class TodaysBand {

    private final Bands bands;

    TodaysBand(Bands bands) {
        this.bands = bands;
    }

    /** What the band would be; null when it would be the same, or was not computed from the class. */
    @Nullable
    TrialText where(@Nullable Band band, ClassSnapshot snapshot, Measure measure) {
        BandSetting setting = band == null ? null : band.setting();
        if (band == null || setting == null || !band.computed() || band.classRevision() == snapshot.revision()) {
            return null;
        }
        BandTrial today = bands.trial(band.segment(), band.measure(), setting);
        return today.differsFrom(band) ? TrialText.of(today, measure) : null;
    }
}
