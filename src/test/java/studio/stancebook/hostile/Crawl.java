package studio.stancebook.hostile;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import studio.stancebook.StudioBrowser;

/** Opens every page that can be reached by links, some of each kind. */
final class Crawl {

    private final StudioBrowser browser;
    private final int mostOfAKind;
    private final Map<String, Integer> opened = new HashMap<>();
    private final Map<String, HttpResponse<String>> answers = new LinkedHashMap<>();

    private Crawl(StudioBrowser browser, int mostOfAKind) {
        this.browser = browser;
        this.mostOfAKind = mostOfAKind;
    }

    /** Addresses, with the answers to them. */
    static Map<String, HttpResponse<String>> from(StudioBrowser browser, int mostOfAKind) {
        Crawl crawl = new Crawl(browser, mostOfAKind);
        crawl.run();
        return crawl.answers;
    }

    private void run() {
        Deque<String> waiting = new ArrayDeque<>(Set.of("/"));
        Set<String> known = new HashSet<>(waiting);
        while (!waiting.isEmpty()) {
            String path = waiting.remove();
            HttpResponse<String> answer = browser.get(path);
            answers.put(path, answer);
            if (isPage(answer)) {
                for (Element link : Jsoup.parse(answer.body()).select("a[href], img[src], object[data]")) {
                    String target = target(path, link);
                    if (isWorthOpening(target) && known.add(target)) {
                        waiting.add(target);
                    }
                }
            }
        }
    }

    static boolean isPage(HttpResponse<String> answer) {
        return answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html");
    }

    private static String target(String path, Element link) {
        String written =
                link.hasAttr("href") ? link.attr("href") : link.hasAttr("src") ? link.attr("src") : link.attr("data");
        String bare = written.replaceFirst("#.*", "");
        return bare.isEmpty() ? path : URI.create(path).resolve(bare).toString();
    }

    private boolean isWorthOpening(String target) {
        if (!target.startsWith("/") || target.startsWith("/assets/") || target.startsWith("/swagger")) {
            return false;
        }
        String kind = target.replaceAll("=[^&]*", "=")
                .replaceAll("[0-9]+", "*")
                .replaceAll("planted-[^/?]*", "*")
                .replaceAll("/bands/[^?]+", "/bands/*");
        return opened.merge(kind, 1, Integer::sum) <= mostOfAKind;
    }
}
