-- A page of a long list by name is read along it.
CREATE INDEX benchmark_package_by_segment_and_name ON benchmark_package (segment_id, name, id);
