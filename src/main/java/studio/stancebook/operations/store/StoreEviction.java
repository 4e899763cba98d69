package studio.stancebook.operations.store;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.Set;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.stereotype.Component;

/**
 * Has the pool throw away its connections when the database closed itself under them, as H2 does when its file cannot be
 * written. All of them, not only the one that told: the pool hands out a connection that was used within the last half
 * second without trying it, so the next request would meet the closed database once more.
 */
@Component
final class StoreEviction implements BeanPostProcessor {

    /** Troubles after which no connection that is open now can be trusted. */
    private static final Set<StoreTrouble> OF_ALL =
            EnumSet.of(StoreTrouble.NO_ROOM, StoreTrouble.DAMAGED, StoreTrouble.UNREACHABLE);

    @Override
    public Object postProcessBeforeInitialization(Object bean, String name) {
        if (bean instanceof HikariDataSource pool) {
            pool.setExceptionOverride(new OfPool(pool));
        }
        return bean;
    }

    private record OfPool(HikariDataSource pool) implements SQLExceptionOverride {

        @java.lang.Override
        public Override adjudicate(SQLException exception) {
            StoreTrouble trouble = StoreTrouble.of(exception).orElse(null);
            if (trouble == null) {
                return Override.CONTINUE_EVICT;
            }
            if (OF_ALL.contains(trouble)) {
                evictAll();
            }
            return Override.MUST_EVICT;
        }

        /** What is idle is closed now, what is in use when it is given back. */
        private void evictAll() {
            HikariPoolMXBean running = pool.getHikariPoolMXBean();
            if (running != null) {
                running.softEvictConnections();
            }
        }
    }
}
