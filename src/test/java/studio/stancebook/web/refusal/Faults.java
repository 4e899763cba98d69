package studio.stancebook.web.refusal;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Positive;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.NotFound;

/** Calls that fail in every way there is, under the API and as pages. */
@Controller
@TestComponent
class Faults {

    enum Colour {
        RED,
        BLUE
    }

    record Tyre(@Positive int rim, double width) {}

    record Vehicle(
            @NotBlank String name,
            Tyre front,
            List<Double> underbody,
            Colour colour,
            Boolean driven,
            LocalDate shown) {}

    /** A value that refuses by itself. */
    record Share(double value) {
        Share {
            if (value > 1) {
                throw Impossible.ofField("value", value + " is not a share: it is from 0 to 1.");
            }
        }
    }

    /** A value that refuses in a way not meant for people. */
    record Hidden(int value) {
        Hidden {
            throw new IllegalArgumentException("secret internals");
        }
    }

    @PostMapping(path = "/api/v1/faults/vehicle", consumes = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    String vehicle(@Valid @RequestBody Vehicle vehicle) {
        return vehicle.name();
    }

    @PostMapping("/api/v1/faults/share")
    @ResponseBody
    String share(@RequestBody Share share) {
        return "ok";
    }

    @PostMapping("/api/v1/faults/hidden")
    @ResponseBody
    String hidden(@RequestBody Hidden hidden) {
        return "ok";
    }

    @PostMapping(path = "/api/v1/faults/file", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @ResponseBody
    String file(@RequestParam("file") MultipartFile file) {
        return "ok";
    }

    @GetMapping(path = "/api/v1/faults/number", produces = MediaType.TEXT_PLAIN_VALUE)
    @ResponseBody
    String number(@RequestParam("diameterMm") @Max(2000) double diameterMm) {
        return "ok";
    }

    @GetMapping("/api/v1/faults/header")
    @ResponseBody
    String header(@RequestHeader("X-Needed") String needed) {
        return "ok";
    }

    @GetMapping("/api/v1/faults/id/{id}")
    @ResponseBody
    String id(@PathVariable long id) {
        return "ok";
    }

    @GetMapping("/api/v1/faults/lead")
    @RequiresPermission(Permission.MANAGE_SEGMENTS)
    @ResponseBody
    String lead() {
        return "ok";
    }

    @GetMapping({"/api/v1/faults/fail/{how}", "/faults/{how}"})
    @ResponseBody
    String fail(@PathVariable String how) {
        throw failures().getOrDefault(how, new NotFound("way to fail", how));
    }

    private static Map<String, RuntimeException> failures() {
        return Map.of(
                "internal",
                new IllegalStateException("secret internals", new RuntimeException("jdbc:h2:mem")),
                "conflict",
                new Conflict("The name is taken."),
                "impossible",
                new Impossible("Two fields.", List.of(new FieldError("a", "A."), new FieldError("b", "B."))),
                "locking",
                new OptimisticLockingFailureException("secret internals"),
                "integrity",
                new DataIntegrityViolationException("secret internals"),
                "teapot",
                new ResponseStatusException(org.springframework.http.HttpStatus.I_AM_A_TEAPOT, "secret"),
                "gone",
                new ResponseStatusException(org.springframework.http.HttpStatus.GONE));
    }
}
