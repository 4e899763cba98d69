package studio.stancebook;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.test.context.ContextConfiguration;

/**
 * Beside {@link StudioTest}: the same server over PostgreSQL 18 instead of H2, started once for all tests, with a new
 * database for each server.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@ContextConfiguration(initializers = PostgresDatabase.class)
public @interface OnPostgres {}
