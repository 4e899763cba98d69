package studio.stancebook.demo;

import java.util.List;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Point;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** Makes the proposals of the demo studio, each at another stage. */
@Component
@Profile("demo")
class DemoProposals {

    private static final String SUV = "off-road-suv";

    private final Proposals proposals;

    DemoProposals(Proposals proposals) {
        this.proposals = proposals;
    }

    void make(SignedIn lead) {
        few(lead);
        sketch(lead);
        outside(lead);
        tooClose(lead);
        inside(lead);
        revised(lead);
    }

    /**
     * The typical vehicle of a class as a full-size model: every value measured on the surface plate, the tyres to 3 mm and
     * standing on their free radius, since they do not give.
     */
    static DimensionSet typical(String segment) {
        DimensionSet set = InventedCatalogue.typical(segment);
        DimensionSetBuilder measured = set.toBuilder();
        for (Axle axle : Axle.values()) {
            measured.set(axle.loadedRadius(), set.tyreDiameter(axle).orElseThrow() / 2)
                    .origin(axle.loadedRadius().key(), Origin.MEASURED);
        }
        set.valueKeys().forEach(key -> measured.origin(key, Origin.MEASURED));
        return measured.uncertainty("frontTyre", 3).uncertainty("rearTyre", 3).build();
    }

    private ProposalView make(String name, String segment, DimensionSet dimensions, String note, SignedIn who) {
        return proposals.make(new ProposalDraft(name, segment, dimensions, note), who);
    }

    private ProposalView stage(ProposalView proposal, Stage stage, SignedIn who) {
        ProposalChange change =
                new ProposalChange(proposal.name(), proposal.segment().key(), stage);
        return proposals.change(proposal.id(), new ExpectedVersion(proposal.version()), change, who);
    }

    private void few(SignedIn who) {
        DimensionSet typical = typical("crossover");
        DimensionSetBuilder few = DimensionSet.builder();
        typical.tyres().forEach(few::tyre);
        for (Dimension dimension : List.of(Dimension.WHEELBASE, Dimension.OVERALL_HEIGHT, Dimension.FRONT_OVERHANG)) {
            typical.scalar(dimension).ifPresent(value -> few.set(dimension, value));
        }
        make(
                "Whinchat",
                "crossover",
                few.build(),
                "First figures from the briefing, nothing drawn yet. Invented.",
                who);
    }

    /** In units of the sketch: its tyre is 100. */
    private void sketch(SignedIn who) {
        DimensionSet sketch = DimensionSet.builder()
                .scale(Scale.UNSCALED)
                .set(Dimension.WHEELBASE, 352)
                .set(Dimension.FRONT_TYRE_DIAMETER, 100)
                .set(Dimension.REAR_TYRE_DIAMETER, 100)
                .set(Dimension.FRONT_RIM_DIAMETER, 55)
                .set(Dimension.REAR_RIM_DIAMETER, 55)
                .set(Dimension.FRONT_OVERHANG, 101)
                .set(Dimension.REAR_OVERHANG, 104)
                .set(Dimension.OVERALL_HEIGHT, 236)
                .set(Dimension.ROCKER_HEIGHT, 51)
                .set(Landmark.COWL, 84, 151)
                .set(Landmark.SCREEN_TOP, 149, 229)
                .set(Landmark.ROOF_APEX, 205, 236)
                .set(Landmark.BACKLIGHT_TOP, 426, 229)
                .set(Landmark.BACKLIGHT_BASE, 445, 158)
                .set(Landmark.TAIL_EDGE, 448, 145)
                .set(Landmark.BELT_FRONT, 106, 152)
                .set(Landmark.BELT_REAR, 436, 157)
                .build();
        make("Sanderling sketch", SUV, sketch, "Off the wall of the workshop, no dimension on it. Invented.", who);
    }

    private void outside(SignedIn who) {
        DimensionSet set = typical(SUV)
                .moved(Variable.z(Landmark.ROCKER_FRONT), 110)
                .moved(Variable.z(Landmark.ROCKER_REAR), 110)
                .moved(Variable.x(Landmark.COWL), -150)
                .moved(Variable.x(Landmark.SCREEN_TOP), -70);
        DimensionSet drawn = set.toBuilder()
                .without(Polyline.OUTLINE.key())
                .without(Polyline.DAYLIGHT_OPENING.key())
                .build();
        ProposalView tern = make("Tern", SUV, drawn, "High rocker, screen well forward. Invented.", who);
        stage(tern, Stage.FOR_REVIEW, who);
    }

    private void tooClose(SignedIn who) {
        DimensionSet typical = typical("saloon");
        double wheelbase = typical.scalar(Dimension.WHEELBASE).orElseThrow();
        double d = typical.tyreDiameter(Axle.FRONT).orElseThrow();
        double longer = Math.rint(4.245 * d - wheelbase);
        DimensionSet set = stretched(typical, longer);
        stage(
                make("Dunlin", "saloon", set, "As long as the class allows, or a little more. Invented.", who),
                Stage.FOR_REVIEW,
                who);
    }

    private void inside(SignedIn who) {
        stage(make("Shelduck", SUV, typical(SUV), "The middle of the road. Invented.", who), Stage.AGREED, who);
    }

    /** The wheelbase made longer and everything behind the rear wheel moved with it. */
    static DimensionSet stretched(DimensionSet set, double byMm) {
        DimensionSetBuilder builder = set.toBuilder();
        double wheelbase = set.scalar(Dimension.WHEELBASE).orElseThrow();
        builder.set(Dimension.WHEELBASE, wheelbase + byMm);
        set.scalar(Dimension.OVERALL_LENGTH).ifPresent(length -> builder.set(Dimension.OVERALL_LENGTH, length + byMm));
        set.landmarks().forEach((landmark, at) -> {
            if (at.x() > wheelbase / 2) {
                builder.set(landmark, at.x() + byMm, at.z());
            }
        });
        set.polylines()
                .forEach((polyline, points) -> builder.set(
                        polyline,
                        points.stream()
                                .map(at -> at.x() > wheelbase / 2 ? new Point(at.x() + byMm, at.z()) : at)
                                .toList()));
        return builder.build();
    }

    /** From outside to inside in four steps. */
    private void revised(SignedIn who) {
        DimensionSet middle = typical("crossover");
        DimensionSet first = stretched(middle, 190).toBuilder()
                .without(Polyline.OUTLINE.key())
                .without(Polyline.DAYLIGHT_OPENING.key())
                .build()
                .moved(Variable.z(Landmark.ROCKER_FRONT), 70)
                .moved(Variable.z(Landmark.ROCKER_REAR), 70);
        DimensionSet second = stretched(first, -110);
        DimensionSet third =
                second.moved(Variable.z(Landmark.ROCKER_FRONT), -45).moved(Variable.z(Landmark.ROCKER_REAR), -45);
        ProposalView pintail =
                make("Pintail", "crossover", first, "First layout: long, and high on its wheels. Invented.", who);
        pintail = revise(pintail, second, "Wheelbase brought back by 110 mm.", who);
        pintail = revise(pintail, third, "Rocker lowered by 45 mm.", who);
        pintail = revise(pintail, middle, "Outline taken off the tape drawing.", who);
        stage(pintail, Stage.FOR_REVIEW, who);
    }

    private ProposalView revise(ProposalView proposal, DimensionSet dimensions, String note, SignedIn who) {
        return proposals.revise(proposal.id(), new ExpectedVersion(proposal.version()), dimensions, note, who);
    }
}
