package studio.stancebook.geometry.web;

import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Geometry of a side view that is sent along. */
@RestController
@RequestMapping("/api/v1/geometry")
class GeometryCalls {

    @PostMapping("/angles")
    AnglesJson angles(@RequestBody SideViewJson view) {
        return new SideViewCheck().answer(view);
    }
}
