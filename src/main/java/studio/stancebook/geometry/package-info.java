/**
 * Plane geometry of the side view: points and lines, tyres and the planes that touch them, underbody angles, areas.
 *
 * <p>Vocabulary: x points rearward and z up, in millimetres, with the ground at z = 0 and the front wheel centre at x =
 * 0; a <em>tyre arc</em> is the circle of the static loaded radius about the wheel centre; the <em>approach</em>,
 * <em>departure</em> and <em>ramp</em> angle are those of ISO 612 and 49 CFR 523.2; the <em>touch</em> is the point of
 * the body that limits an angle. Everything but the drawn scale is independent of the unit of length.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "problem"})
package studio.stancebook.geometry;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
