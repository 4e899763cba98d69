package studio.stancebook.web.refusal;

import java.util.Arrays;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import studio.stancebook.problem.NotFound;
import studio.stancebook.problem.ProblemType;

/** Where the type of a problem leads: what it means and what to do. */
@Controller
class ProblemPage {

    @GetMapping("/problems/{slug}")
    String show(@PathVariable String slug, Model model) {
        ProblemType type = Arrays.stream(ProblemType.values())
                .filter(candidate -> candidate.slug().equals(slug))
                .findFirst()
                .orElseThrow(() -> new NotFound("kind of problem", Words.shown(slug)));
        model.addAttribute("type", type);
        return "refusal/problem";
    }
}
