package studio.stancebook.proposal;

import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/**
 * Who may do what: everybody sees all proposals but a learner, who sees his or her own; everybody but a viewer makes
 * proposals and changes his or her own; the lead changes all, and alone says that one is agreed.
 */
public final class ProposalRights {

    private ProposalRights() {}

    public static boolean seesAll(SignedIn who) {
        return who.role() != Role.LEARNER;
    }

    public static boolean sees(SignedIn who, long ownerId) {
        return seesAll(who) || owns(who, ownerId);
    }

    public static boolean makes(SignedIn who) {
        return who.role() != Role.VIEWER;
    }

    public static boolean changes(SignedIn who, long ownerId) {
        return who.role() == Role.LEAD || (makes(who) && owns(who, ownerId));
    }

    /** Whether somebody who may change a proposal may bring it to a stage, or away from it. */
    public static boolean decides(SignedIn who, Stage stage) {
        return stage != Stage.AGREED || who.role() == Role.LEAD;
    }

    private static boolean owns(SignedIn who, long ownerId) {
        return who.personId() == ownerId;
    }
}
