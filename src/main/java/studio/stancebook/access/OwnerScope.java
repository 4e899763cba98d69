package studio.stancebook.access;

import java.util.Set;

/**
 * Whose things a permission reaches, for one person: the decision about one thing, and the condition of a query for many.
 *
 * @param everybody whether things of everybody, whatever {@code owners} says
 * @param owners the ids of those whose things else; empty for nobody's
 */
public record OwnerScope(boolean everybody, Set<Long> owners) {

    /**
     * The condition of a JPQL query of Spring Data that finds the things of {@code p} in the parameter {@code scope}, and no
     * others. What it finds is what {@link #includes} says.
     */
    public static final String CONDITION = "(:#{#scope.everybody()} = true or p.ownerId in :#{#scope.owners()})";

    public OwnerScope {
        owners = Set.copyOf(owners);
    }

    static OwnerScope of(SignedIn who, Permission permission) {
        boolean own = permission.isGrantedForOwn(who.role());
        return new OwnerScope(permission.isGrantedTo(who.role()), own ? Set.of(who.personId()) : Set.of());
    }

    /** Whether the things of a person are in it. */
    public boolean includes(long ownerId) {
        return everybody || owners.contains(ownerId);
    }
}
