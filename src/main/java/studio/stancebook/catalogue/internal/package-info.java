/** How segments and packages are kept, searched, screened and read into classes. */
@NullMarked
package studio.stancebook.catalogue.internal;

import org.jspecify.annotations.NullMarked;
