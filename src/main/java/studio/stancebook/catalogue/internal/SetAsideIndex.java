package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.List;
import org.springframework.data.domain.Pageable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Which packages of a segment are set aside or have values set aside, without a look at all the others. */
@Component
class SetAsideIndex {

    private final JdbcClient database;

    SetAsideIndex(JdbcClient database) {
        this.database = database;
    }

    /** Notes what a package is after a change of what is set aside of it, or of its segment. */
    void note(StoredPackage kept) {
        database.sql("DELETE FROM package_apart WHERE package_id = ?")
                .param(kept.id())
                .update();
        if (!kept.counts() || !kept.valuesSetAside().isEmpty()) {
            database.sql("INSERT INTO package_apart (package_id, segment_id) VALUES (?, ?)")
                    .params(kept.id(), kept.segment().id())
                    .update();
        }
    }

    /** Notes packages that are set aside or have values set aside, and were not before. */
    void noteAll(Collection<Long> packageIds) {
        database.sql("INSERT INTO package_apart (package_id, segment_id)"
                        + " SELECT id, segment_id FROM benchmark_package WHERE id IN (:ids)")
                .param("ids", packageIds)
                .update();
    }

    /** The ids of a page of them by name. */
    List<Long> of(String segment, Pageable page) {
        return database.sql("SELECT p.id FROM package_apart a JOIN benchmark_package p ON p.id = a.package_id"
                        + " WHERE a.segment_id = (SELECT id FROM segment WHERE segment_key = ?)"
                        + " ORDER BY p.name, p.id OFFSET ? ROWS FETCH NEXT ? ROWS ONLY")
                .params(segment, page.getOffset(), page.getPageSize())
                .query(Long.class)
                .list();
    }
}
