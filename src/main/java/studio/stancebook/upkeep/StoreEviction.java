package studio.stancebook.upkeep;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;

/**
 * Has the pool throw away a connection whose database closed itself under it, as H2 does when its file cannot be written.
 * Named in {@code application.yml}; made by the pool.
 */
public final class StoreEviction implements SQLExceptionOverride {

    @java.lang.Override
    public Override adjudicate(SQLException exception) {
        return StoreTrouble.of(exception).isPresent() ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
    }
}
