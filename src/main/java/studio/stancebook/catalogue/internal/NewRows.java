package studio.stancebook.catalogue.internal;

import jakarta.persistence.EntityManager;
import java.util.List;
import org.hibernate.Session;
import org.hibernate.StatelessSession;
import org.springframework.stereotype.Component;

/**
 * Inserts many rows in one batch, in the transaction under way but past the entity manager, which would remember each of
 * them and compare it with what it was before every further query.
 */
@Component
class NewRows {

    private final EntityManager entities;

    NewRows(EntityManager entities) {
        this.entities = entities;
    }

    /** Inserts entities, all of one kind, and gives each its id. */
    <T> void insert(List<T> rows) {
        if (!rows.isEmpty()) {
            try (StatelessSession batch = entities.unwrap(Session.class)
                    .statelessWithOptions()
                    .connection()
                    .open()) {
                Chunks.of(rows).forEach(batch::insertMultiple);
            }
        }
    }
}
