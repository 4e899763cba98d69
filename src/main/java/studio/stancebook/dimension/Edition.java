package studio.stancebook.dimension;

/**
 * Which edition's meaning the codes W101 and W102 have: in the older specification forms front and rear tread, in SAE
 * J1100 of 2009 tread at the ground and track at the spindle, each taken front and rear.
 */
public enum Edition {
    OLDER("older"),
    J1100_2009("2009");

    private final String key;

    Edition(String key) {
        this.key = key;
    }

    /** The name in JSON. */
    public String key() {
        return key;
    }
}
