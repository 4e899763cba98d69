package studio.stancebook.band.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import studio.stancebook.band.Band;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.SegmentPicture;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.reshaping.TypicalPackage;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.drawing.rendering.FragmentCache;
import studio.stancebook.drawing.sideview.ClassDrawing;
import studio.stancebook.drawing.sideview.ClassZone;
import studio.stancebook.drawing.sideview.Ghost;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.tyre.TyreDesignation;

/**
 * The class of a segment as one picture: every package's silhouette, the median over them, and what the bands allow behind
 * them.
 *
 * <p>The median is {@link TypicalPackage}: the median of each dimension and of each coordinate of a landmark, in tyre
 * diameters, of those that at least half of the packages drawn record; where a package has an outline, the outline nearest
 * to these medians, bent to them.
 *
 * <p>Kept as markup under the state of the class and the versions of the bands, and made once however many ask at a time.
 */
@Component
class ClassPictures implements SegmentPicture {

    /** Of a larger class every second, third, ... package is drawn, in the order in which they were recorded. */
    static final int MOST_DRAWN = 200;

    /** The median is drawn to one tyre diameter, so any tyre serves where none of the class is named. */
    private static final TyreDesignation ANY_TYRE = TyreDesignation.parse("265/70R17");

    private final Bands bands;
    private final Catalogue catalogue;
    private final ClassSnapshots classes;
    private final StudioMeasures measures;
    private final FragmentCache fragments;

    ClassPictures(
            Bands bands,
            Catalogue catalogue,
            ClassSnapshots classes,
            StudioMeasures measures,
            FragmentCache fragments) {
        this.bands = bands;
        this.catalogue = catalogue;
        this.classes = classes;
        this.measures = measures;
        this.fragments = fragments;
    }

    /** What decides on the picture of a class. */
    private record PictureState(String segment, long classState, List<ZoneState> zones) {}

    private record ZoneState(ClassZone.Kind kind, int version) {}

    @Override
    public CachedFragment of(SegmentView segment) {
        ClassSnapshot snapshot = classes.of(segment.id(), segment.key(), segment.revision());
        List<ZoneState> versions = new ArrayList<>();
        List<ClassZone> zones = new ArrayList<>();
        for (Band band : bands.current(new SegmentName(segment.id(), segment.key(), segment.name()))
                .values()) {
            Optional<ClassZone.Kind> kind = ClassZone.Kind.of(band.measure());
            if (kind.isPresent() && band.range() != null) {
                versions.add(new ZoneState(kind.get(), band.version()));
                zones.add(new ClassZone(kind.get(), band.range().limits()));
            }
        }
        PictureState state = new PictureState(segment.key(), snapshot.revision(), List.copyOf(versions));
        return fragments.get(state, "band/class-picture", () -> Map.of("picture", picture(snapshot, zones)));
    }

    private ClassPicture picture(ClassSnapshot snapshot, List<ClassZone> zones) {
        List<PackageView> read = catalogue.getAll(chosen(snapshot));
        List<DimensionSet> sets = read.stream().map(PackageView::dimensions).toList();
        List<ClassDrawing.Member> members = read.stream()
                .map(one -> new ClassDrawing.Member(one.id(), new Ghost(one.title(), one.dimensions())))
                .toList();
        Ghost typical = TypicalPackage.of(sets)
                .map(found -> new Ghost("", found.on(found.tyre().orElse(ANY_TYRE), 0)))
                .orElse(null);
        ClassDrawing drawing = ClassDrawing.of(members, typical, zones);
        return ClassPicture.of(snapshot, drawing, members, zones, measures.current());
    }

    private static List<Long> chosen(ClassSnapshot snapshot) {
        int step = ClassPicture.step(snapshot.packages());
        List<Long> ids = new ArrayList<>();
        int[] seen = {0};
        snapshot.rows().forEach((block, row) -> {
            if (seen[0]++ % step == 0) {
                ids.add(block.id(row));
            }
        });
        return ids;
    }
}
