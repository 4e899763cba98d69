package studio.stancebook.dimension.form;

import java.util.Optional;
import java.util.function.Consumer;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;

/**
 * What of a form can be drawn.
 *
 * @param set as typed, wrong values of it as they were saved
 * @param mended whether there are such values
 */
public record DrawableForm(DimensionSet set, boolean mended) {

    /**
     * Empty where nothing can be.
     *
     * @param saved the form as it was first shown
     * @param check refuses a set that cannot be, naming every value
     */
    public static Optional<DrawableForm> of(DimensionForm typed, DimensionForm saved, Consumer<DimensionSet> check) {
        DimensionForm form = typed;
        while (true) {
            try {
                DimensionSet set = form.read(Origin.DRAWING);
                check.accept(set);
                return Optional.of(new DrawableForm(set, !form.typed().equals(typed.typed())));
            } catch (ImpossibleDimensions impossible) {
                DimensionForm mended = form.withSaved(saved, impossible.errors());
                if (mended.typed().equals(form.typed())) {
                    return Optional.empty();
                }
                form = mended;
            }
        }
    }
}
