package studio.stancebook.edge;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import studio.stancebook.OneProcessAtATime;

/**
 * HAProxy with the configuration of {@code src/proxy}, in front of a server on this machine, with a certificate made for the
 * test: the HAProxy of this machine, else Debian's when we may install it, else a sentence that says what to do.
 */
final class HaProxy implements AutoCloseable {

    private static final Path CONFIGURATION = Path.of("src/proxy/haproxy.cfg").toAbsolutePath();
    private static final List<Path> PLACES =
            List.of(Path.of("/usr/sbin/haproxy"), Path.of("/usr/local/sbin/haproxy"), Path.of("/usr/bin/haproxy"));
    private static final char[] PASSWORD = "throw-away".toCharArray();

    private final Process process;
    private final int https;
    private final int http;
    private final SSLContext trust;

    private HaProxy(Process process, int https, int http, SSLContext trust) {
        this.process = process;
        this.https = https;
        this.http = http;
        this.trust = trust;
    }

    /** @param folder an empty one, for key and certificate */
    static HaProxy start(Path folder, int server) throws IOException, InterruptedException, GeneralSecurityException {
        Path program = OneProcessAtATime.make("haproxy", () -> installed().or(HaProxy::installFromDebian))
                .orElseThrow(() -> new IllegalStateException(
                        "This test needs HAProxy 2.6 or later: install it (Debian:" + " apt-get install haproxy)."));
        KeyStore made = makeCertificate(folder.resolve("key.p12"));
        Path pem = Files.writeString(folder.resolve("proxy.pem"), pem(made));
        int https = freePort();
        int http = freePort();
        ProcessBuilder builder = new ProcessBuilder(program.toString(), "-db", "-f", CONFIGURATION.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("console").toFile());
        builder.environment()
                .putAll(Map.of(
                        "PROXY_HTTPS",
                        "127.0.0.1:" + https,
                        "PROXY_HTTP",
                        "127.0.0.1:" + http,
                        "PROXY_PEM",
                        pem.toString(),
                        "PROXY_SERVER",
                        "127.0.0.1:" + server,
                        "PROXY_SOURCE",
                        AtTheEdge.PROXY,
                        "PROXY_PATIENCE",
                        "1s"));
        HaProxy proxy = new HaProxy(builder.start(), https, http, trusting(made));
        proxy.waitUntilItListens(folder.resolve("console"));
        return proxy;
    }

    int httpPort() {
        return http;
    }

    /** A connection over TLS from an address, on which the proxy's certificate was checked. */
    SSLSocket connect(String from, String... protocols) throws IOException {
        Socket plain = new Socket(InetAddress.getByName("127.0.0.1"), https, InetAddress.getByName(from), 0);
        SSLSocket socket = (SSLSocket) trust.getSocketFactory().createSocket(plain, "studio.example", https, true);
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setApplicationProtocols(protocols);
        parameters.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(parameters);
        socket.startHandshake();
        return socket;
    }

    private void waitUntilItListens(Path console) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (!listens()) {
            if (process.waitFor(20, TimeUnit.MILLISECONDS) || System.nanoTime() > end) {
                close();
                throw new IllegalStateException("HAProxy did not start:\n" + Files.readString(console));
            }
        }
    }

    private boolean listens() {
        try (Socket connection = new Socket("127.0.0.1", https)) {
            return connection.isConnected();
        } catch (IOException notYet) {
            return false;
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private static Optional<Path> installed() {
        return PLACES.stream().filter(Files::isExecutable).findFirst();
    }

    private static Optional<Path> installFromDebian() {
        boolean root = "root".equals(System.getProperty("user.name"));
        if (root && Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
            run("apt-get", "update", "-qq");
            run("apt-get", "install", "-y", "-qq", "--no-install-recommends", "haproxy");
        }
        return installed();
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            if (!process.waitFor(5, TimeUnit.MINUTES)) {
                process.destroyForcibly();
            }
        } catch (IOException failure) {
            System.err.println("Could not run " + String.join(" ", command) + ": " + failure.getMessage());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** By Java's own tool, since Java has no public class for it. */
    private static KeyStore makeCertificate(Path file) throws IOException, GeneralSecurityException {
        run(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "proxy",
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-dname",
                "CN=studio.example",
                "-ext",
                "san=dns:studio.example",
                "-validity",
                "2",
                "-storetype",
                "PKCS12",
                "-storepass",
                new String(PASSWORD),
                "-keystore",
                file.toString());
        return KeyStore.getInstance(file.toFile(), PASSWORD);
    }

    private static String pem(KeyStore store) throws GeneralSecurityException {
        return block("PRIVATE KEY", store.getKey("proxy", PASSWORD).getEncoded())
                + block("CERTIFICATE", store.getCertificate("proxy").getEncoded());
    }

    private static String block(String kind, byte[] content) {
        byte[] newLine = "\n".getBytes(StandardCharsets.US_ASCII);
        return "-----BEGIN " + kind + "-----\n"
                + Base64.getMimeEncoder(64, newLine).encodeToString(content)
                + "\n-----END " + kind + "-----\n";
    }

    private static SSLContext trusting(KeyStore made) throws GeneralSecurityException, IOException {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("proxy", made.getCertificate("proxy"));
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), new SecureRandom());
        return context;
    }

    @Override
    public void close() {
        process.destroy();
    }
}
