package studio.stancebook.access;

import static studio.stancebook.access.Role.DESIGNER;
import static studio.stancebook.access.Role.LEAD;
import static studio.stancebook.access.Role.LEARNER;
import static studio.stancebook.access.Role.TUTOR;
import static studio.stancebook.access.Role.VIEWER;

import java.util.Set;

/**
 * What can be allowed, and to which roles it is: the access policy of the studio. Whatever is not here, everybody who is
 * signed in may do: read packages, bands and measures, calculate, and look after their own account.
 *
 * <p>Some things have an owner. A role may have a permission for the things of everybody, or for its holder's own only.
 */
public enum Permission {
    /** Change anything but the own account; without it, no other permission to change something counts. */
    CONTRIBUTE(Set.of(LEAD, DESIGNER, TUTOR, LEARNER)),
    /** Record, import, change, set aside and delete packages, and answer questions about them. */
    RECORD_PACKAGES(Set.of(LEAD, DESIGNER)),
    /** Make, change and delete segments. */
    MANAGE_SEGMENTS(Set.of(LEAD)),
    /** Set and withdraw bands. */
    SET_BANDS(Set.of(LEAD)),
    /** Add ratios to the measures, and remove them. */
    DEFINE_RATIOS(Set.of(LEAD)),
    /** Make proposals, which are their maker's from then on. */
    MAKE_PROPOSALS(Set.of(LEAD, DESIGNER, TUTOR, LEARNER)),
    /** See proposals, by owner. */
    SEE_PROPOSALS(Set.of(LEAD, DESIGNER, TUTOR, VIEWER), Set.of(LEARNER)),
    /** Change and revise proposals, by owner. */
    CHANGE_PROPOSALS(Set.of(LEAD), Set.of(DESIGNER, TUTOR, LEARNER)),
    /** Say that a proposal is agreed, or that it is no longer. */
    AGREE_TO_PROPOSALS(Set.of(LEAD)),
    /** Add people, change their role and access, and end their sign-ins. */
    MANAGE_PEOPLE(Set.of(LEAD)),
    /** Read, verify and export the activity record. */
    READ_ACTIVITY(Set.of(LEAD)),
    /** Take a backup, which has everything in it. */
    TAKE_BACKUPS(Set.of(LEAD)),
    /** Read the metrics of the server. */
    READ_METRICS(Set.of(LEAD));

    private final Set<Role> forAll;
    private final Set<Role> forOwn;

    Permission(Set<Role> forAll) {
        this(forAll, Set.of());
    }

    Permission(Set<Role> forAll, Set<Role> forOwn) {
        this.forAll = forAll;
        this.forOwn = forOwn;
    }

    /** Whether a role has this, whoever owns the thing. */
    public boolean isGrantedTo(Role role) {
        return forAll.contains(role);
    }

    /** Whether a role has this for what its holder owns. */
    boolean isGrantedForOwn(Role role) {
        return forAll.contains(role) || forOwn.contains(role);
    }
}
