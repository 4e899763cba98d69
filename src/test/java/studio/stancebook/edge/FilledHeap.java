package studio.stancebook.edge;

import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.Primary;
import studio.stancebook.operations.memory.HeapUse;

/** A heap that a test fills. */
@TestComponent
@Primary
class FilledHeap implements HeapUse {

    private volatile double share;

    void fill(double newShare) {
        share = newShare;
    }

    @Override
    public double afterCollection() {
        return share;
    }

    @Override
    public void collect() {}
}
