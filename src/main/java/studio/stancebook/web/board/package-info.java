/** The board: the page one starts from. */
@NullMarked
package studio.stancebook.web.board;

import org.jspecify.annotations.NullMarked;
