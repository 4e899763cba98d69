package studio.stancebook.hostile;

import java.util.List;

/** Text that breaks what takes it for something else. */
final class HostileText {

    /** Markup, in all the places where text may come to stand; a name of its own so that it can be found. */
    static final List<String> MARKUP = List.of(
            "<b id=planted>bold</b>",
            "\"><img src=planted onerror=planted()>",
            "' onmouseover='planted()' x='",
            "</title><script>planted()</script>",
            "<svg/onload=planted()>",
            "]]><planted/>",
            "<!-- <planted> -->",
            "&lt;planted&gt; &amp; &#x3c;planted&#62;",
            "${planted} [[${7*7}]] *{planted} __${7*7}__ ~{planted}",
            "{{planted}} #{planted} <%= planted %>",
            "javascript:planted()",
            "'; DROP TABLE planted; --");

    /** Marks and overrides of direction, which can make text read as what it is not (Unicode UAX #9, UTR #36). */
    static final List<String> DIRECTION = List.of(
            "\u202Aembedded\u202C",
            "\u202Bembedded\u202C",
            "left\u202Dover",
            "right\u202Eredro",
            "\u2066isolated\u2069",
            "\u2067isolated\u2069",
            "\u2068isolated\u2069",
            "popped\u202C",
            "ended\u2069");

    /** What somebody may well be called, and has to be shown. */
    static final List<String> LETTERS = List.of(
            "\u05D7\u05E1\u05D9\u05D3\u05D4 2",
            "\u0644\u0642\u0644\u0642\u200F",
            "Z\u0351\u036B\u0343\u036A\u0302a\u0300lgo",
            "\uD83D\uDE99\uD83C\uDFFD\u200D\uD83D\uDD27",
            "\u6587\u5B57 \u30AB\u30E1\u30E9",
            "I\u0307\u0131\u00DF\uFB01",
            "\uD834\uDD1E");

    /** What is no text at all. */
    static final List<String> BROKEN = List.of(
            "",
            " ",
            "\u0000",
            "a\u0000b",
            "\u0007\u001B[31m",
            "line\nline",
            "\r\nX-Planted: 1",
            "\u2028\u2029",
            "\uFFFE\uFFFF",
            "\uD800",
            "\uDC00x",
            "\u200B",
            "\uFEFFx",
            "%00",
            "%s%n%d",
            "../../../../etc/passwd",
            "NaN",
            "Infinity",
            "-0",
            "1e400",
            "0x10",
            "null",
            "[object]",
            "=1+1");

    private HostileText() {}

    static String any(Chance chance) {
        return switch (chance.below(12)) {
            case 0, 1, 2 -> chance.of(MARKUP);
            case 3, 4 -> chance.of(DIRECTION);
            case 5, 6 -> chance.of(LETTERS);
            case 7 -> chance.of(LETTERS).repeat(1 + chance.below(300));
            case 8 -> "x".repeat(chance.of(60, 61, 100, 101, 200, 201, 255, 500, 501, 2000, 2001, 10_000));
            default -> chance.of(BROKEN);
        };
    }
}
