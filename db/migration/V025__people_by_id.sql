-- Who did something is kept by id, beside the name that they had at the time. Of what there was, the id is that of the one person
-- who bears the name now; where nobody does, or more than one, the name alone stays. Nobody is ever deleted, so the ids hold.

ALTER TABLE benchmark_package ADD COLUMN created_by_id BIGINT;
ALTER TABLE benchmark_package ADD COLUMN changed_by_id BIGINT;
ALTER TABLE benchmark_package ADD COLUMN set_aside_by_id BIGINT;
ALTER TABLE package_query ADD COLUMN settled_by_id BIGINT;
ALTER TABLE band_version ADD COLUMN set_by_id BIGINT;
ALTER TABLE proposal ADD COLUMN changed_by_id BIGINT;
ALTER TABLE studio_ratio ADD COLUMN added_by_id BIGINT;

UPDATE benchmark_package SET
    created_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = benchmark_package.created_by HAVING COUNT(*) = 1),
    changed_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = benchmark_package.changed_by HAVING COUNT(*) = 1),
    set_aside_by_id =
        (SELECT MIN(p.id) FROM person p WHERE p.display_name = benchmark_package.set_aside_by HAVING COUNT(*) = 1);
UPDATE package_query SET
    settled_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = package_query.settled_by HAVING COUNT(*) = 1)
    WHERE settled_by IS NOT NULL;
UPDATE band_version SET
    set_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = band_version.set_by HAVING COUNT(*) = 1);
UPDATE proposal SET
    changed_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = proposal.changed_by HAVING COUNT(*) = 1);
UPDATE studio_ratio SET
    added_by_id = (SELECT MIN(p.id) FROM person p WHERE p.display_name = studio_ratio.added_by HAVING COUNT(*) = 1);

ALTER TABLE benchmark_package ADD CONSTRAINT benchmark_package_created_by FOREIGN KEY (created_by_id) REFERENCES person (id);
ALTER TABLE benchmark_package ADD CONSTRAINT benchmark_package_changed_by FOREIGN KEY (changed_by_id) REFERENCES person (id);
ALTER TABLE benchmark_package
    ADD CONSTRAINT benchmark_package_set_aside_by FOREIGN KEY (set_aside_by_id) REFERENCES person (id);
ALTER TABLE package_query ADD CONSTRAINT package_query_settled_by FOREIGN KEY (settled_by_id) REFERENCES person (id);
ALTER TABLE band_version ADD CONSTRAINT band_version_set_by FOREIGN KEY (set_by_id) REFERENCES person (id);
ALTER TABLE proposal ADD CONSTRAINT proposal_changed_by FOREIGN KEY (changed_by_id) REFERENCES person (id);
ALTER TABLE studio_ratio ADD CONSTRAINT studio_ratio_added_by FOREIGN KEY (added_by_id) REFERENCES person (id);
