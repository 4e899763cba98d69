package studio.stancebook.proposal.web;

import java.util.Locale;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.catalogue.TypicalPackages;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.LengthText;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.dimension.reshaping.Reshaping;
import studio.stancebook.dimension.reshaping.TypicalPackage;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.quantity.NumberReading;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.tyre.TyreDesignation;
import studio.stancebook.tyre.UnknownTyreDesignation;

/** Dimensions to start a proposal with: what is typical of a class or lies between two, a benchmark, another proposal. */
@Component
class ProposalStarts {

    private static final int HUNDRED = 100;

    private final TypicalPackages typical;
    private final Catalogue catalogue;
    private final Segments segments;
    private final Proposals proposals;
    private final MessageSource messages;

    ProposalStarts(
            TypicalPackages typical,
            Catalogue catalogue,
            Segments segments,
            Proposals proposals,
            MessageSource messages) {
        this.typical = typical;
        this.catalogue = catalogue;
        this.segments = segments;
        this.proposals = proposals;
        this.messages = messages;
    }

    /**
     * What a form is filled with.
     *
     * @param segment key of the segment to be judged in
     * @param name to begin with
     */
    record Start(DimensionSet dimensions, String segment, String name) {}

    /**
     * @throws Impossible naming each parameter that cannot be accepted
     * @throws studio.stancebook.problem.NotFound if it names a package or proposal that is not there
     */
    Start of(StartParameters asked, SignedIn who) {
        return switch (asked.fromText()) {
            case "segment" -> fromSegment(asked);
            case "between" -> fromBetween(asked);
            case "package" -> fromPackage(asked);
            case "proposal" -> fromProposal(asked, who);
            default -> throw Impossible.ofField("from", "Start from segment, between, package or proposal.");
        };
    }

    private Start fromSegment(StartParameters asked) {
        String key = known("segment", asked.segmentKey());
        TypicalPackage class_ = typical("segment", key);
        TyreDesignation tyre = tyre(asked, class_);
        DimensionSet set = class_.on(tyre, wheelbase(asked));
        return new Start(set, key, words("proposal.start.name.segment", nameOf(key), tyre.text()));
    }

    private Start fromBetween(StartParameters asked) {
        String key = known("segment", asked.segmentKey());
        String other = known("other", asked.otherKey());
        if (key.equals(other)) {
            throw Impossible.ofField("other", "Choose two different segments.");
        }
        double share = share(asked);
        TypicalPackage between = typical("segment", key).towards(typical("other", other), share);
        TyreDesignation tyre = tyre(asked, between);
        String nearer = share <= 0.5 ? key : other;
        return new Start(
                between.on(tyre, wheelbase(asked)),
                nearer,
                words("proposal.start.name.between", nameOf(key), nameOf(other)));
    }

    private Start fromPackage(StartParameters asked) {
        PackageView benchmark = catalogue.get(id(asked));
        return new Start(
                sized(plain(benchmark.dimensions()), asked),
                benchmark.segment(),
                words("proposal.start.name.package", benchmark.name()));
    }

    private Start fromProposal(StartParameters asked, SignedIn who) {
        var copied = proposals.get(id(asked), who);
        RevisionView revision = proposals.revision(copied, asked.revision(), who);
        return new Start(
                sized(revision.dimensions(), asked),
                copied.segment().key(),
                words("proposal.start.name.copy", copied.name()));
    }

    /** The values of a benchmark as the intentions of a proposal: without how they were measured. */
    private static DimensionSet plain(DimensionSet measured) {
        return new DimensionSet(
                measured.scale(),
                measured.edition(),
                Origin.DRAWING,
                measured.tyres(),
                measured.scalars(),
                measured.landmarks(),
                measured.polylines(),
                Map.of(),
                Map.of(),
                Map.of());
    }

    /** On the tyre and wheelbase that were asked for. */
    private static DimensionSet sized(DimensionSet set, StartParameters asked) {
        double wheelbase = wheelbase(asked);
        DimensionSet stretched =
                wheelbase > 0 ? Reshaping.with(set, Dimension.WHEELBASE, wheelbase, GivesWay.LENGTH) : set;
        return asked.tyreText().isEmpty()
                ? stretched
                : stretched.toBuilder().tyres(parsed(asked.tyreText())).build();
    }

    private String known(String field, String key) {
        if (!segments.exists(key)) {
            throw Impossible.ofField(field, "Choose a segment.");
        }
        return key;
    }

    private String nameOf(String key) {
        return segments.named(key).name();
    }

    private TypicalPackage typical(String field, String key) {
        return typical.of(key)
                .orElseThrow(() -> Impossible.ofField(
                        field, nameOf(key) + " has no package with a tyre yet, so nothing is typical of it."));
    }

    private static TyreDesignation tyre(StartParameters asked, TypicalPackage class_) {
        return asked.tyreText().isEmpty()
                ? class_.tyre().orElseThrow(() -> Impossible.ofField("tyre", "Write a tyre size such as 265/70R17."))
                : parsed(asked.tyreText());
    }

    private static TyreDesignation parsed(String text) {
        try {
            return TyreDesignation.parse(text);
        } catch (UnknownTyreDesignation unknown) {
            throw Impossible.ofField("tyre", unknown.detail());
        }
    }

    /** In mm; 0 where none is asked for. */
    private static double wheelbase(StartParameters asked) {
        if (asked.wheelbaseText().isEmpty()) {
            return 0;
        }
        NumberReading read = LengthText.parse(
                asked.wheelbaseText(), ShownUnits.current().length().symbol());
        double mm = read.number() == null || read.ambiguous() ? Double.NaN : LengthText.kept(read.number());
        if (!Dimension.WHEELBASE.range().contains(mm)) {
            throw Impossible.ofField(
                    "wheelbase",
                    "A wheelbase is a length of "
                            + ShownUnits.current().length().range(Dimension.WHEELBASE.range(), 0)
                            + ", such as 2850 mm or 112.2 in.");
        }
        return mm;
    }

    private static double share(StartParameters asked) {
        String text = asked.shareText();
        if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) > HUNDRED) {
            throw Impossible.ofField("share", "Write a whole number from 0 to 100.");
        }
        return Integer.parseInt(text) / (double) HUNDRED;
    }

    private static long id(StartParameters asked) {
        Long id = asked.of();
        if (id == null) {
            throw Impossible.ofField("of", "Choose what to start from.");
        }
        return id;
    }

    private String words(String key, Object... places) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, places, locale);
    }
}
