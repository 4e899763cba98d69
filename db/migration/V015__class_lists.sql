-- What is told and listed about a segment, so that nobody has to look at every package of it.

-- How many packages a segment has, those set aside included; changed together with the revision.
ALTER TABLE segment ADD COLUMN packages BIGINT DEFAULT 0 NOT NULL;
UPDATE segment SET packages = (SELECT COUNT(*) FROM benchmark_package p WHERE p.segment_id = segment.id);
ALTER TABLE segment ADD CONSTRAINT segment_packages_count CHECK (packages >= 0);

-- The packages that are set aside or have single values set aside.
CREATE TABLE package_apart (
    package_id BIGINT PRIMARY KEY,
    segment_id BIGINT NOT NULL,
    CONSTRAINT package_apart_is_package FOREIGN KEY (package_id) REFERENCES benchmark_package (id) ON DELETE CASCADE,
    CONSTRAINT package_apart_of_segment FOREIGN KEY (segment_id) REFERENCES segment (id)
);
CREATE INDEX package_apart_by_segment ON package_apart (segment_id);
INSERT INTO package_apart (package_id, segment_id)
    SELECT id, segment_id FROM benchmark_package WHERE set_aside_at IS NOT NULL OR class_measures IS NOT NULL;

-- The segment of the package as long as the question is open.
ALTER TABLE package_query ADD COLUMN open_in BIGINT;
UPDATE package_query SET open_in =
    (SELECT p.segment_id FROM benchmark_package p WHERE p.id = package_query.package_id) WHERE settled_at IS NULL;
ALTER TABLE package_query ADD CONSTRAINT package_query_open_or_settled
    CHECK ((open_in IS NULL) = (settled_at IS NOT NULL));
CREATE INDEX package_query_open ON package_query (open_in, id);
