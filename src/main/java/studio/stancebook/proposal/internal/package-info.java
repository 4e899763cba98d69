/** How proposals are kept, judged and guarded. */
@NullMarked
package studio.stancebook.proposal.internal;

import org.jspecify.annotations.NullMarked;
