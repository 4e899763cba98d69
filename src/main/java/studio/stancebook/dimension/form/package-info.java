/**
 * The form in which people type a dimension set, shared by the pages of packages and of proposals: what was typed, what
 * is wrong with it, and the dimension set that it says. Its template is {@code fragments/dimension-form}.
 *
 * <p>Vocabulary: an <em>entry</em> is one input; a <em>section</em> a group of inputs under one heading; a
 * <em>doubt</em> the uncertainty and origin of one value.
 */
@NullMarked
@NamedInterface("form")
package studio.stancebook.dimension.form;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
