package studio.stancebook.exchange.web;

import java.util.Arrays;
import java.util.Optional;

/** Tables that the import takes as they are: invented vehicles of invented segments. */
enum ExampleTable {
    /** Headings as a designer shortens them, and inches. */
    SHORT("short", """
            Car,Yr,Seg,W/B,O/A Lth,F/OH,R/OH,Wdth,Ht_in,Tyre F,Tyre R,Gnd clr
            Invented Wren,2024,Example compact,2560,4040,800,680,1770,57.5,205/55R16,205/55R16,140
            Invented Gull,2025,Example compact,2620,4210,830,760,1795,57.9,215/50R17,215/50R17,145
            Invented Kite,2025,Example off-road,2720,4460,780,960,1860,72.4,245/75R16,245/75R16,235
            """),
    /** Our own headings with their units, some landmarks among them. */
    FULL("full", """
            name,segment,modelYear,origin,tyre,wheelbase [mm],overallLength [mm],frontOverhang [mm],rearOverhang [mm],\
            overallWidth [mm],overallHeight [mm],frontTrack [mm],rearTrack [mm],groundClearance [mm],cowl x [mm],cowl z [mm],\
            screenTop x [mm],screenTop z [mm],kerbMass [kg]
            Invented Tern,Example compact,2026,drawing,205/55R16,2600,4150,820,730,1780,1465,1540,1535,140,470,985,1240,1440,1290
            Invented Crane,Example off-road,2026,drawing,265/70R17,2850,4800,850,1100,1930,1850,1620,1620,230,520,1160,1050,1760,2150
            """),
    /** The tyre split in two columns, and lengths in inches. */
    INCHES("inches", """
            Vehicle,Class,Year,Wheelbase (in),Length (in),Width (in),Height (in),Tire,Rim,Curb weight (lb)
            Invented Swift,Example compact,2023,102,163,70,57,195/60,R15,2650
            Invented Heron,Example compact,2024,104.5,168,71,58,205/55,R16,2780
            """);

    private final String key;
    private final String text;

    ExampleTable(String key, String text) {
        this.key = key;
        this.text = text;
    }

    static Optional<ExampleTable> ofKey(String key) {
        return Arrays.stream(values()).filter(table -> table.key.equals(key)).findFirst();
    }

    String key() {
        return key;
    }

    /** The table as CSV. */
    String text() {
        return text.replace("\n", "\r\n");
    }
}
