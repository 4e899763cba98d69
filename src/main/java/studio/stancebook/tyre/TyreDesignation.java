// Stand-in until the module lands: the tyre and geometry helper replaces this file.
package studio.stancebook.tyre;

public record TyreDesignation(String text) {
    public static TyreDesignation parse(String t) {
        return new TyreDesignation(t);
    }

    public String notation() {
        return "metric";
    }

    public double overallDiameterMm() {
        return 1;
    }

    public double rimDiameterMm() {
        return 1;
    }
}
