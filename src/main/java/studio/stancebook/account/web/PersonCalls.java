package studio.stancebook.account.web;

import io.swagger.v3.oas.annotations.Operation;
import java.net.URI;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.problem.ExpectedVersion;

/** The people of the studio, for leads. */
@RestController
@RequestMapping("/api/v1/people")
@RequiresPermission(Permission.MANAGE_PEOPLE)
class PersonCalls {

    private final PersonService personService;

    PersonCalls(PersonService personService) {
        this.personService = personService;
    }

    /** @param role the key of a role, such as {@code designer} */
    record PersonJson(
            long id, String email, String displayName, String role, boolean active, long version, Instant createdAt) {

        static PersonJson of(PersonEntry person) {
            return new PersonJson(
                    person.id(),
                    person.email(),
                    person.displayName(),
                    person.role().key(),
                    person.active(),
                    person.version(),
                    person.createdAt());
        }
    }

    @GetMapping
    @Operation(summary = "The people of the studio, by name")
    Page<PersonJson> list(Pageable page) {
        return personService.list(page).map(PersonJson::of);
    }

    @GetMapping("/{id}")
    @Operation(summary = "A person")
    ResponseEntity<PersonJson> show(@PathVariable long id) {
        return answer(ResponseEntity.ok(), personService.get(id));
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "Add a person")
    ResponseEntity<PersonJson> add(@RequestBody NewPerson person) {
        PersonEntry added = personService.add(person);
        return answer(ResponseEntity.created(URI.create("/api/v1/people/" + added.id())), added);
    }

    @PutMapping("/{id}")
    @Operation(summary = "Change name and role of a person, and whether they may sign in")
    ResponseEntity<PersonJson> change(
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody PersonChange change) {
        return answer(ResponseEntity.ok(), personService.change(id, ExpectedVersion.ofIfMatch(ifMatch), change));
    }

    private static ResponseEntity<PersonJson> answer(ResponseEntity.BodyBuilder builder, PersonEntry person) {
        return builder.eTag(ExpectedVersion.tag(person.version())).body(PersonJson.of(person));
    }
}
