import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Asks a running server for lists of packages in several orders, and prints how long each took. See docs/performance.md. */
final class ListTimes {

    private static final int WARM_UP = 3;
    private static final int TIMES = 11;
    private static final Map<String, String> LISTS = new LinkedHashMap<>();

    static {
        LISTS.put("by name", "sort=name");
        LISTS.put("by a measure", "sort=wheelbase-share");
        LISTS.put("by a measure, far down", "sort=wheelbase-share&page=1000");
        LISTS.put("by a measure, descending, a segment", "sort=wheelbase-share,desc&segment=SEGMENT");
        LISTS.put("narrow range, by name", "sort=name&measure=wheelbase-share&min=0.6&max=0.61");
        LISTS.put("wide range, by name", "sort=name&measure=wheelbase-share&min=0.3");
        LISTS.put("wide range, by another measure", "sort=height-to-length&measure=wheelbase-share&min=0.3");
        LISTS.put("wide range and a word, by name", "q=77&sort=name&measure=wheelbase-share&min=0.3");
    }

    /** Arguments: address, token, key of a segment. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        for (Map.Entry<String, String> list : LISTS.entrySet()) {
            URI address = URI.create(
                    arguments[0] + "/api/v1/packages?" + list.getValue().replace("SEGMENT", arguments[2]));
            HttpRequest request = HttpRequest.newBuilder(address)
                    .header("Authorization", "Bearer " + arguments[1])
                    .build();
            System.out.println(list.getKey() + ": " + times(request));
        }
    }

    private static String times(HttpRequest request) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        long[] millis = new long[TIMES];
        for (int i = -WARM_UP; i < TIMES; i++) {
            long start = System.nanoTime();
            var answer = client.send(request, BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                return answer.statusCode() + " " + answer.body();
            }
            if (i >= 0) {
                millis[i] = (System.nanoTime() - start) / 1_000_000;
            }
        }
        Arrays.sort(millis);
        return "median " + millis[TIMES / 2] + " ms, slowest " + millis[TIMES - 1] + " ms";
    }
}
