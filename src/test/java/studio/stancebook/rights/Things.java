package studio.stancebook.rights;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.springframework.mock.web.MockMultipartFile;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Reading;
import studio.stancebook.exchange.importing.Upload;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.proposal.ProposalDraft;

/**
 * One of each that a route can be asked for, made when first spoken of. Proposal, token, passkey, upload and sign-in belong to an
 * owner.
 */
final class Things {

    private static final Pattern IN_PATH = Pattern.compile("([a-z-]+)/\\{(\\w+)}");
    private static final Pattern NAMED = Pattern.compile("\\{([a-zA-Z]+(?:\\.[a-z]+)?)}");

    /** What a variable of a pattern stands for, by the word before it. */
    private static final Map<String, String> OF_PATH = Map.ofEntries(
            Map.entry("packages", "{package}"),
            Map.entry("proposals", "{proposal}"),
            Map.entry("people", "{person}"),
            Map.entry("tokens", "{token}"),
            Map.entry("passkeys", "{passkey}"),
            Map.entry("bring-in", "{upload}"),
            Map.entry("queries", "{query}"),
            Map.entry("segments", "{segment}"),
            Map.entry("measures", "{ratio}"),
            Map.entry("ratios", "{ratio}"),
            Map.entry("sign-ins", "{signIn}"),
            Map.entry("values", "wheelbase"),
            Map.entry("bands", "wheelbase-in-wheels"),
            Map.entry("revisions", "1"),
            Map.entry("problems", "not-found"));

    private static final Duration LONGEST_RUN = Duration.ofMinutes(1);

    private final Makers makers;
    private final SignedIn owner;
    private final Map<String, Object> made = new HashMap<>();
    private final Map<String, Supplier<Object>> ways = new HashMap<>();

    Things(Makers makers, SignedIn owner) {
        this.makers = makers;
        this.owner = owner;
        ways.put("segment", this::makeSegment);
        ways.put("segment.version", () -> makers.segments().get(get("segment")).version());
        ways.put("package", this::makePackage);
        ways.put("package.version", () -> makers.catalogue().get(id("package")).version());
        ways.put(
                "query",
                () -> makers.catalogue().get(id("package")).queries().get(0).id());
        ways.put("proposal", this::makeProposal);
        ways.put(
                "proposal.name",
                () -> makers.proposals().get(id("proposal"), owner).name());
        ways.put(
                "proposal.version",
                () -> makers.proposals().get(id("proposal"), owner).version());
        ways.put("person", this::makePerson);
        ways.put("person.version", () -> makers.people().get(id("person")).version());
        ways.put(
                "token",
                () -> makers.tokens()
                        .issue(owner, NewToken.named("Token of every route"))
                        .id());
        ways.put("passkey", this::makePasskey);
        ways.put("upload", this::makeUpload);
        ways.put("ratio", this::makeRatio);
        ways.put("signIn", this::signIn);
    }

    /** A pattern with something there is in place of its variables. */
    String path(String pattern) {
        String named = IN_PATH.matcher(pattern)
                .replaceAll(found ->
                        found.group(1) + "/" + OF_PATH.getOrDefault(found.group(1), "{" + found.group(2) + "}"));
        return filled(named, value -> value.replace(" ", "%20"));
    }

    /** Words with what they name in its place. */
    String filled(String words) {
        return filled(words, value -> value);
    }

    private String filled(String words, UnaryOperator<String> written) {
        return NAMED.matcher(words)
                .replaceAll(found -> ways.containsKey(found.group(1))
                        ? written.apply(get(found.group(1)))
                        : "{" + found.group(1) + "}");
    }

    /** What a name stands for; made if it is not there yet, and versions as they are now. */
    String get(String name) {
        Supplier<Object> way = ways.get(name);
        if (name.contains(".")) {
            return String.valueOf(way.get());
        }
        Object known = made.get(name);
        if (known == null) {
            known = way.get();
            made.put(name, known);
        }
        return String.valueOf(known);
    }

    /** Waits until a run of the upload is over, which goes on after its request was answered. */
    void awaitRun() {
        long deadline = System.nanoTime() + LONGEST_RUN.toNanos();
        while (makers.uploads().of(owner.personId()).filter(Upload::busy).isPresent()) {
            if (System.nanoTime() > deadline) {
                throw new AssertionError("The run of an upload is not over after " + LONGEST_RUN);
            }
            Thread.onSpinWait();
        }
    }

    private long id(String name) {
        return Long.parseLong(get(name));
    }

    private String makeSegment() {
        String key = Invented.key("every-route");
        makers.segments().create(key, "Class of every route", "");
        return key;
    }

    private long makePackage() {
        PackageDraft plain = Invented.draft(get("segment"), "Tern", 2850);
        PackageDraft draft = new PackageDraft(
                "Tern", get("segment"), 2020, Origin.DRAWING, plain.dimensions(), List.of("Which tyres?"));
        return makers.catalogue().add(draft, new Author(null, "Tests")).id();
    }

    /** Made while the owner still might, where the owner is a viewer now. */
    private long makeProposal() {
        SignedIn maker = new SignedIn(owner.personId(), owner.name(), owner.email(), Role.DESIGNER);
        ProposalDraft draft = new ProposalDraft(
                Invented.name("Unseen dunlin"),
                get("segment"),
                Invented.dimensions(2700).build(),
                "");
        return makers.proposals().make(draft, maker).id();
    }

    private long makePerson() {
        return makers.somebody(Role.VIEWER).personId();
    }

    private String makeUpload() {
        byte[] table = ("name,segment,wheelbase\nTern," + get("segment") + ",2800\n").getBytes(StandardCharsets.UTF_8);
        return makers.uploads()
                .receive(owner.personId(), new MockMultipartFile("file", "a.csv", "text/csv", table))
                .id();
    }

    private long makePasskey() {
        Visitor visitor = Visitor.of(makers.studio(), owner);
        Route add = new Route("POST", "/account/passkeys", Optional.empty());
        visitor.send(add, add.path(), Map.of(), "label=Passkey+of+every+route&credential=" + visitor.makePasskey());
        return makers.passkeys().list(owner).get(0).id();
    }

    private String makeRatio() {
        StudioRatio ratio = new StudioRatio(
                Invented.key("every-route-ratio"),
                "Ratio of every route",
                List.of(Reading.FRONT_OVERHANG),
                List.of(Reading.WHEELBASE));
        return makers.measures().add(ratio, new Author(null, "Tests")).key();
    }

    /** One more place where the owner is signed in. */
    private String signIn() {
        List<String> before = keysOfSignIns();
        Visitor.of(makers.studio(), owner);
        return keysOfSignIns().stream()
                .filter(key -> !before.contains(key))
                .findFirst()
                .orElseThrow();
    }

    private List<String> keysOfSignIns() {
        return makers.signIns().of(owner.personId(), null).stream()
                .map(place -> place.key())
                .toList();
    }
}
