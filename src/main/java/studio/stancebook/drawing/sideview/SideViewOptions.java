package studio.stancebook.drawing.sideview;

import java.util.List;
import java.util.Map;
import java.util.Set;
import studio.stancebook.drawing.Lettering;

/**
 * What a side view shows beside the vehicle itself.
 *
 * @param id unique on the page; letters, digits and hyphens
 * @param title of the picture, such as the vehicle's name
 * @param outside keys of the measures outside their band: red tape
 * @param tooClose keys of the measures too close to call: hatched
 * @param remarks by measure key, what is written beside the part of an outside measure, such as {@code 0.02 over}
 * @param ghosts others behind it
 * @param alignment where the others are laid over
 * @param inWheels true when the others are scaled to the same tyre diameter
 */
public record SideViewOptions(
        String id,
        String title,
        Set<String> outside,
        Set<String> tooClose,
        Map<String, String> remarks,
        List<Ghost> ghosts,
        Alignment alignment,
        boolean inWheels) {

    /** @throws IllegalArgumentException if {@code id} is not letters, digits and hyphens beginning with a letter */
    public SideViewOptions {
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException("An id has letters, digits and hyphens, beginning with a letter: " + id);
        }
        title = Lettering.writable(title);
        outside = Set.copyOf(outside);
        tooClose = Set.copyOf(tooClose);
        remarks = Map.copyOf(remarks);
        ghosts = List.copyOf(ghosts);
    }

    /** The vehicle alone. */
    public static SideViewOptions of(String id, String title) {
        return new SideViewOptions(id, title, Set.of(), Set.of(), Map.of(), List.of(), Alignment.FRONT_WHEEL, false);
    }

    public SideViewOptions withOutside(Set<String> measureKeys) {
        return new SideViewOptions(id, title, measureKeys, tooClose, remarks, ghosts, alignment, inWheels);
    }

    public SideViewOptions withTooClose(Set<String> measureKeys) {
        return new SideViewOptions(id, title, outside, measureKeys, remarks, ghosts, alignment, inWheels);
    }

    public SideViewOptions withRemarks(Map<String, String> byMeasureKey) {
        return new SideViewOptions(id, title, outside, tooClose, byMeasureKey, ghosts, alignment, inWheels);
    }

    public SideViewOptions withGhosts(List<Ghost> others) {
        return new SideViewOptions(id, title, outside, tooClose, remarks, others, alignment, inWheels);
    }

    public SideViewOptions alignedAt(Alignment point, boolean scaledToWheels) {
        return new SideViewOptions(id, title, outside, tooClose, remarks, ghosts, point, scaledToWheels);
    }
}
