import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Writes a table of invented packages, the same every time: dimensions about as they are on estate cars, one value in ten
 * left out, one in a thousand typed wrongly enough to be asked about. See docs/performance.md.
 */
final class InventedTable {

    private static final String HEADING = "name,segment,model year,tyre,wheelbase,front overhang,rear overhang,overall width,"
            + "overall height,front track,rear track,ground clearance,seat height,kerb mass";
    private static final String[] TYRES = {"205/60R16", "225/45R18", "235/50R18", "245/45R19", "255/55R19"};

    private final SplittableRandom random = new SplittableRandom(20261129);

    /** Arguments: file, rows, then the keys of the segments among which they are shared out. */
    public static void main(String[] arguments) throws IOException {
        InventedTable table = new InventedTable();
        int rows = Integer.parseInt(arguments[1]);
        try (BufferedWriter out = Files.newBufferedWriter(Path.of(arguments[0]), StandardCharsets.UTF_8)) {
            out.write(HEADING + "\n");
            for (int i = 0; i < rows; i++) {
                out.write(table.row(i, arguments[2 + i % (arguments.length - 2)]) + "\n");
            }
        }
    }

    private String row(int number, String segment) {
        return String.join(
                ",",
                "Invented " + (number + 1),
                segment,
                String.valueOf(2000 + random.nextInt(27)),
                TYRES[random.nextInt(TYRES.length)],
                String.valueOf(Math.round(about(2820, 110))),
                sometimes(880, 45),
                sometimes(1060, 70),
                sometimes(1860, 40),
                sometimes(1480, 40),
                sometimes(1590, 25),
                sometimes(1590, 25),
                sometimes(150, 15),
                sometimes(560, 30),
                sometimes(1650, 160));
    }

    private String sometimes(double middle, double spread) {
        return random.nextInt(10) == 0 ? "" : String.format(Locale.ROOT, "%.1f", about(middle, spread));
    }

    /** Nearly normal, by a sum of twelve; now and then far away. */
    private double about(double middle, double spread) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return middle + spread * (random.nextInt(1000) == 0 ? Math.signum(sum) * 4.5 : sum);
    }
}
