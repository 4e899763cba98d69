/** Which values of a package a class is made of, in which order, and in which form they are kept. */
@NullMarked
@NamedInterface("layout")
package studio.stancebook.classes.layout;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
