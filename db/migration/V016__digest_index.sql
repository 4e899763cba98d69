-- The packages of equal dimensions are found in the index alone, without a look at the packages.
DROP INDEX benchmark_package_by_digest;
CREATE INDEX benchmark_package_by_digest ON benchmark_package (dimension_digest, segment_id, id);

-- Packages of another list of measures are asked for by what they have not, for which no index is of use.
DROP INDEX benchmark_package_by_layout;
