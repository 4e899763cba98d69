package studio.stancebook.demo;

import java.util.List;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.Directory;
import studio.stancebook.account.PersonName;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;

/** Fills the demo studio at its first start, by the calls that people's own requests use; a studio with segments is left. */
@Component
@Profile("demo")
class DemoStudio implements ApplicationRunner {

    private final Segments segments;
    private final Directory directory;
    private final DemoSegments catalogue;
    private final DemoBands bands;
    private final DemoProposals proposals;

    DemoStudio(
            Segments segments, Directory directory, DemoSegments catalogue, DemoBands bands, DemoProposals proposals) {
        this.segments = segments;
        this.directory = directory;
        this.catalogue = catalogue;
        this.bands = bands;
        this.proposals = proposals;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        List<PersonName> leads = directory.active(Role.LEAD);
        if (segments.names().isEmpty() && !leads.isEmpty()) {
            PersonName lead = leads.get(0);
            SignedIn who = new SignedIn(lead.id(), lead.name(), "", Role.LEAD);
            catalogue.fill(who.author());
            bands.set(segments.names().stream().map(SegmentName::key).toList(), who.author());
            proposals.make(who);
        }
    }
}
