/** Lists in pages: what may be asked for, and the shape of the answer. */
@NullMarked
package studio.stancebook.web.list;

import org.jspecify.annotations.NullMarked;
