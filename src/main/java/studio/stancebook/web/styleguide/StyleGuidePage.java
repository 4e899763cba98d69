package studio.stancebook.web.styleguide;

import org.springframework.data.domain.Pageable;
import org.springframework.data.web.PageableDefault;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import studio.stancebook.measure.OffRoadTable;

/** Shows whoever is signed in what pages are made of. */
@Controller
class StyleGuidePage {

    @GetMapping("/style-guide")
    String show(@PageableDefault(size = 4, sort = "name") Pageable wanted, Model model) {
        model.addAttribute("notice", "web.style-guide.notice");
        model.addAttribute("noticeWords", new Object[] {"Dunlin long"});
        model.addAttribute("sample", Sample.ofPage(wanted));
        model.addAttribute("drawings", SampleDrawings.make());
        model.addAttribute("verdictStrips", SampleStrips.ofEveryVerdict());
        model.addAttribute("sizeStrips", SampleStrips.ofEverySize());
        model.addAttribute("changes", SampleStrips.changes());
        model.addAttribute("offRoad", OffRoadTable.of(SampleVehicle.withLines()));
        return "styleguide/style-guide";
    }

    @GetMapping("/style-guide/dimensions")
    String type(Model model) {
        model.addAttribute("form", SampleVehicle.refusedForm());
        return "styleguide/dimensions";
    }

    @GetMapping("/style-guide/question")
    String ask() {
        return "styleguide/question";
    }
}
