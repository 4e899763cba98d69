package studio.stancebook.geometry.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A side view as the API takes it: mm, x rearward of the front wheel centre, z above the ground.
 *
 * @param underbody the rigid parts as a polyline of {@code [x, z]}
 */
record SideViewJson(
        @Nullable Double wheelbase,
        @Nullable WheelJson front,
        @Nullable WheelJson rear,
        @Nullable List<@Nullable List<@Nullable Double>> underbody) {

    /**
     * @param centreHeight height of the wheel centre, which is the static loaded radius
     * @param radius radius of the tyre; a free radius is larger than the height of the centre
     */
    record WheelJson(
            @Nullable Double centreHeight, @Nullable Double radius) {}
}
