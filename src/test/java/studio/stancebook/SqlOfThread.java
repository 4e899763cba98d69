package studio.stancebook;

import org.hibernate.resource.jdbc.spi.StatementInspector;

/** Counts the statements that Hibernate prepares in the thread of a test, whatever others do beside it. */
public final class SqlOfThread implements StatementInspector {

    private static final long serialVersionUID = 1L;
    private static final ThreadLocal<Integer> PREPARED = ThreadLocal.withInitial(() -> 0);

    /** How many this thread has prepared since it began. */
    public static int prepared() {
        return PREPARED.get();
    }

    @Override
    public String inspect(String sql) {
        PREPARED.set(PREPARED.get() + 1);
        return sql;
    }
}
