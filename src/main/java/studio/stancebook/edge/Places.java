package studio.stancebook.edge;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.Semaphore;

/** Room for a number of things at a time, of which one address may have some. */
final class Places {

    private final Semaphore all;
    private final int perAddress;
    private final ConcurrentMap<String, Integer> taken = new ConcurrentHashMap<>();

    Places(int all, int perAddress) {
        this.all = new Semaphore(all);
        this.perAddress = perAddress;
    }

    enum Answer {
        TAKEN,
        ADDRESS_HAS_ITS_SHARE,
        FULL
    }

    /** Takes a place, without waiting for one. */
    Answer take(String address) {
        if (taken.merge(address, 1, Integer::sum) > perAddress) {
            forget(address);
            return Answer.ADDRESS_HAS_ITS_SHARE;
        }
        if (!all.tryAcquire()) {
            forget(address);
            return Answer.FULL;
        }
        return Answer.TAKEN;
    }

    void give(String address) {
        all.release();
        forget(address);
    }

    private void forget(String address) {
        taken.computeIfPresent(address, (same, count) -> count > 1 ? count - 1 : null);
    }
}
