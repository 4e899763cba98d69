package studio.stancebook.account.internal;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import studio.stancebook.access.Role;

/** The people of the studio, active or not. */
interface People extends Repository<Person, Long> {

    Person saveAndFlush(Person person);

    Optional<Person> findById(long id);

    Optional<Person> findByEmail(String canonicalEmail);

    Page<Person> findAllByOrderByDisplayNameAscIdAsc(Pageable page);

    List<Person> findAllByIdIn(Iterable<Long> ids);

    boolean existsByEmail(String canonicalEmail);

    long count();

    /** The active people of a role, locked so that two changes at once cannot both count on the other one. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from Person p where p.role = :role and p.active order by p.id")
    List<Person> lockActive(Role role);

    /** A person, locked so that two changes at once cannot pass the same limit. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select p from Person p where p.id = :id")
    Optional<Person> lock(long id);
}
