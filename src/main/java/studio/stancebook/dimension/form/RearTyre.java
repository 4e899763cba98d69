package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.Map;
import studio.stancebook.dimension.Axle;

/**
 * The tyre of the rear axle: the one of the front axle, unless it differs.
 *
 * @param name of the input that says that it differs
 * @param differs whether it does
 * @param entry its size where it does; nothing in it where it is not known
 */
public record RearTyre(String name, boolean differs, Entry entry) {

    /** Not part of a dimension set. */
    static final String DIFFERS = PREFIX + "rearDiffers";

    private static final String YES = "true";

    /** The identifier of the input in its page. */
    public String id() {
        return name.replace('.', '-');
    }

    static boolean differs(DimensionForm form) {
        return form.text(DIFFERS).equals(YES)
                || !form.text(PREFIX + Axle.REAR.tyreKey()).isEmpty();
    }

    /** The same tyre is written once; a rear tyre that is not known is told apart from one that is the same. */
    static void write(Map<String, String> texts) {
        String front = texts.get(PREFIX + Axle.FRONT.tyreKey());
        String rear = texts.get(PREFIX + Axle.REAR.tyreKey());
        if (front != null && front.equals(rear)) {
            texts.remove(PREFIX + Axle.REAR.tyreKey());
        } else if (front != null) {
            texts.put(DIFFERS, YES);
        }
    }

    /** Whether the size of the front axle is that of the rear one as well. */
    static boolean sameAsFront(DimensionForm form) {
        return !differs(form)
                && form.text(PREFIX + Axle.REAR.tyreDiameter().key()).isEmpty();
    }
}
