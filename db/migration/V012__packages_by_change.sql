-- The board shows the packages that were changed last, however many there are.

CREATE INDEX benchmark_package_by_change ON benchmark_package (changed_at DESC, id DESC);
