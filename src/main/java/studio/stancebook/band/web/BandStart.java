package studio.stancebook.band.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.band.PracticeBands;
import studio.stancebook.band.VehicleType;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.problem.Malformed;
import studio.stancebook.statistics.BandMethod;
import studio.stancebook.statistics.ClassSize;
import studio.stancebook.statistics.QuantileType;

/** Sets bands for all measures of a segment that never had one, to begin with. */
@Controller
class BandStart {

    /** From the class itself, or from the trade's rules of thumb for a type of car. */
    static final List<String> KEYS = keys();

    private static final String FROM_CLASS = "class";
    private static final BandSetting MIDDLE =
            BandSetting.of(new BandMethod.Percentile(0.05, 0.95, QuantileType.TYPE_7));

    private final Bands bands;
    private final ClassSnapshots classes;

    BandStart(Bands bands, ClassSnapshots classes) {
        this.bands = bands;
        this.classes = classes;
    }

    private static List<String> keys() {
        List<String> keys = new ArrayList<>(List.of(FROM_CLASS));
        for (VehicleType type : VehicleType.values()) {
            keys.add(type.key());
        }
        return List.copyOf(keys);
    }

    @PostMapping("/segments/{segment}/bands")
    @RequiresPermission(Permission.SET_BANDS)
    String start(
            @PathVariable String segment,
            @RequestParam(defaultValue = FROM_CLASS) String from,
            @AuthenticationPrincipal SignedIn who,
            RedirectAttributes redirect) {
        Map<String, BandSetting> settings = from.equals(FROM_CLASS) ? ofClass(segment) : ofTrade(from);
        int set = bands.setWhereNone(segment, settings, "To begin with", who.author());
        redirect.addFlashAttribute("notice", "band.done.start");
        redirect.addFlashAttribute("noticeWords", new Object[] {set});
        return "redirect:/segments/{segment}/bands";
    }

    private Map<String, BandSetting> ofClass(String segment) {
        ClassSnapshot snapshot = classes.of(segment);
        Map<String, BandSetting> settings = new LinkedHashMap<>();
        snapshot.measures().stream()
                .filter(measure -> ClassSize.of(snapshot.column(measure).n()) == ClassSize.SUFFICIENT)
                .forEach(measure -> settings.put(measure, MIDDLE));
        return settings;
    }

    private static Map<String, BandSetting> ofTrade(String key) {
        VehicleType type = VehicleType.ofKey(key)
                .orElseThrow(
                        () -> Malformed.ofField("from", "Bands begin from one of " + String.join(", ", KEYS) + "."));
        Map<String, BandSetting> settings = new LinkedHashMap<>();
        PracticeBands.of(type).forEach(band -> settings.put(band.measure(), band.setting()));
        return settings;
    }
}
