/** What keeps the store from serving, and the connections that are given up for it. */
@NullMarked
package studio.stancebook.operations.store;

import org.jspecify.annotations.NullMarked;
