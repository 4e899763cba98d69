/** What every page has around it: frame, theme, studio's name, signed-in person, style sheet. */
@NullMarked
package studio.stancebook.web.shell;

import org.jspecify.annotations.NullMarked;
