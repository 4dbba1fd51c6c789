package rainlap.cli;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArraySet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rainlap.page.Live;

/** Serves one page, or an index and those it leads to, to this machine alone, and tells the pages that are open when it has changed. */
final class PageServer implements AutoCloseable {
    private static final int HEARTBEAT_SECONDS = 15;
    private static final int MOST_LISTENERS = 40;
    private static final String EVENTS = "text/event-stream; charset=utf-8";
    /** A page's number where there are several, and what is asked of it. */
    private static final Pattern PLACE = Pattern.compile("/(?:([0-9]{1,4})/)?(|problems|events|should/[0-9]{1,6})");
    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread t = new Thread(work, "page");
        t.setDaemon(true);
        return t;
    });
    private final Set<BlockingQueue<Integer>> listeners = new CopyOnWriteArraySet<>();
    private volatile Function<String, Optional<Live>> site;

    /**
     * Opens a port on loopback; 0 takes any that is free.
     *
     * @throws IOException if the port is taken or may not be opened
     */
    PageServer(int port, Function<String, Optional<Live>> first) throws IOException {
        System.setProperty("sun.net.httpserver.nodelay", "true"); // read once, when the server's classes load: without it each answer waits 40 ms
        site = first;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getByAddress("127.0.0.1", new byte[] {127, 0, 0, 1}), port), 0);
        server.setExecutor(threads);
        server.createContext("/", this::answer);
        server.start();
    }

    private int port() {
        return server.getAddress().getPort();
    }

    String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    /** Shows another state of the pages in every browser that has one open. */
    void show(Function<String, Optional<Live>> next) {
        site = next;
        next.apply("").ifPresent(p -> listeners.forEach(l -> l.offer(p.drawing())));
    }

    private void answer(HttpExchange x) throws IOException {
        try (x) {
            x.getResponseHeaders().set("Cache-Control", "no-store");
            x.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
            x.getResponseHeaders().set("X-Frame-Options", "DENY");
            x.getResponseHeaders().set("Cross-Origin-Resource-Policy", "same-origin");
            x.getResponseHeaders().set("Referrer-Policy", "no-referrer");
            if (!isForUs(x.getRequestHeaders().getFirst("Host"))) {
                send(x, 403, "text/plain", "This page is for this machine, under " + address() + " alone.\n");
            } else if (!x.getRequestMethod().equals("GET") && !isHead(x)) {
                send(x, 405, "text/plain", "There is nothing here to change.\n");
            } else {
                find(x);
            }
        }
    }

    /** A page of somebody else's can have its own name lead to this machine: only our own names are answered. */
    private boolean isForUs(String host) {
        return host != null && (host.equals("127.0.0.1:" + port()) || host.equals("localhost:" + port()));
    }

    private void find(HttpExchange x) throws IOException {
        Matcher m = PLACE.matcher(x.getRequestURI().getPath());
        Optional<Live> page = m.matches() ? site.apply(m.group(1) == null ? "" : m.group(1)) : Optional.empty();
        if (page.isEmpty()) {
            send(x, 404, "text/plain", "There is nothing here.\n");
        } else if (m.group(2).isEmpty()) {
            send(x, 200, "text/html", page.get().html());
        } else if (m.group(2).equals("problems")) {
            send(x, 200, "text/html", page.get().panel());
        } else if (m.group(2).equals("events")) {
            events(x, page.get().drawing());
        } else {
            send(x, 200, "text/html", page.get().should(Integer.parseInt(m.group(2).substring("should/".length()))));
        }
    }

    private static boolean isHead(HttpExchange x) {
        return x.getRequestMethod().equals("HEAD");
    }

    /** To HEAD the same without the body; the server complains of a length given to it there in any other way. */
    private static void send(HttpExchange x, int status, String type, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        x.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
        if (isHead(x)) {
            x.getResponseHeaders().set("Content-Length", Integer.toString(bytes.length));
            x.sendResponseHeaders(status, -1);
            return;
        }
        x.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        x.getResponseBody().write(bytes);
    }

    /** The number of the drawing, at once and again whenever something has changed, until the browser goes. */
    private void events(HttpExchange x, int first) throws IOException {
        if (isHead(x)) {
            x.getResponseHeaders().set("Content-Type", EVENTS);
            x.sendResponseHeaders(200, -1);
            return;
        }
        if (listeners.size() >= MOST_LISTENERS) {
            send(x, 503, "text/plain", "Too many pages are open.\n");
            return;
        }
        BlockingQueue<Integer> news = new LinkedBlockingQueue<>();
        listeners.add(news);
        try (OutputStream out = x.getResponseBody()) {
            x.getResponseHeaders().set("Content-Type", EVENTS);
            x.sendResponseHeaders(200, 0);
            Integer next = first;
            while (true) {
                String event = next == null ? ":\n\n" : "event: state\ndata: " + next + "\n\n";
                out.write(event.getBytes(StandardCharsets.UTF_8));
                out.flush();
                next = news.poll(HEARTBEAT_SECONDS, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            listeners.remove(news);
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
