package studio.stancebook.operations.memory;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Objects;

/** How full the heap is. */
public interface HeapUse {

    /** The share of the largest heap that was in use after each of its pools was collected last; 0 before that. */
    double afterCollection();

    /** Asks for a collection of the whole heap. */
    void collect();

    /** That of this process. */
    static HeapUse ofThisProcess() {
        return new HeapUse() {
            @Override
            public double afterCollection() {
                long used = ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .map(MemoryPoolMXBean::getCollectionUsage)
                        .filter(Objects::nonNull)
                        .mapToLong(MemoryUsage::getUsed)
                        .sum();
                return (double) used / Runtime.getRuntime().maxMemory();
            }

            @Override
            public void collect() {
                ManagementFactory.getMemoryMXBean().gc();
            }
        };
    }
}
