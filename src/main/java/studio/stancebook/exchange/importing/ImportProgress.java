package studio.stancebook.exchange.importing;

/** Told how far an import is. */
@FunctionalInterface
public interface ImportProgress {

    /** @param share from 0 to 1 */
    void at(double share);
}
