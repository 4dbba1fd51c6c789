package rainlap.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A Chromium without a window, led over its DevTools protocol. */
public final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final long SECONDS = 60;
    private static final Set<String> GONE = Set.of("Inspected target navigated or closed", "Execution context was destroyed.", "Cannot find default execution context");
    private final Path profile;
    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
    private final List<String> complaints = Collections.synchronizedList(new ArrayList<>());
    private final List<String> requests = Collections.synchronizedList(new ArrayList<>());
    private volatile CompletableFuture<Void> loaded = new CompletableFuture<>();
    private String session = "";
    private int count;

    private Browser(Path program) throws IOException {
        profile = Files.createTempDirectory("rainlap-browser");
        process = new ProcessBuilder(program.toString(), "--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--no-first-run",
                "--disable-background-networking", "--remote-debugging-port=0", "--user-data-dir=" + profile, "about:blank").redirectErrorStream(true).start();
        socket = HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(URI.create(address()), new Listener()).join();
    }

    /** The first browser that is installed. */
    public static Optional<Path> program() {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(":")).flatMap(d -> Stream.of("chromium", "chromium-browser", "google-chrome")
                .map(n -> Path.of(d, n))).filter(Files::isExecutable).findFirst();
    }

    public static Browser open(Path program) {
        try {
            Browser b = new Browser(program);
            String target = b.send("Target.createTarget", Map.of("url", "about:blank")).get("targetId").asText();
            b.session = b.send("Target.attachToTarget", Map.of("targetId", target, "flatten", true)).get("sessionId").asText();
            for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
                b.send(domain + ".enable", Map.of());
            }
            return b;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The address the browser says on its own output; the rest of what it says is drained. */
    private String address() throws IOException {
        BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.contains("ws://")) {
                Thread drain = new Thread(() -> drain(out));
                drain.setDaemon(true);
                drain.start();
                return line.substring(line.indexOf("ws://")).strip();
            }
        }
        throw new IOException("the browser said no address");
    }

    /** So that the browser never waits for somebody to read what it says; it ends with the browser. */
    private static void drain(BufferedReader out) {
        try {
            while (out.readLine() != null) {
                continue;
            }
        } catch (IOException e) {
            return;
        }
    }

    /** The page that was asked went away before it answered: it is loading anew. */
    private static final class Gone extends AssertionError {
        private static final long serialVersionUID = 1;

        Gone(String method) {
            super(method + ": the page went away before it answered");
        }
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                take(text.toString());
                text.setLength(0);
            }
            from.request(1);
            return null;
        }
    }

    private void take(String message) {
        try {
            JsonNode m = JSON.readTree(message);
            if (m.has("id")) {
                answers.remove(m.get("id").asInt()).complete(m);
                return;
            }
            JsonNode p = m.path("params");
            switch (m.path("method").asText()) {
                case "Page.loadEventFired" -> loaded.complete(null);
                case "Network.requestWillBeSent" -> requests.add(p.at("/request/url").asText());
                case "Runtime.exceptionThrown" -> complaints.add(p.at("/exceptionDetails/exception/description").asText(p.toString()));
                case "Log.entryAdded" -> complaints.add(p.at("/entry/text").asText() + " " + p.at("/entry/url").asText());
                case "Runtime.consoleAPICalled" -> complaints.add(p.path("args").toString());
                default -> { }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private JsonNode send(String method, Map<String, ?> params) {
        int id = ++count;
        ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
        message.set("params", JSON.valueToTree(params));
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        answers.put(id, answer);
        socket.sendText(message.toString(), true).join();
        JsonNode m = answer.orTimeout(SECONDS, TimeUnit.SECONDS).join();
        if (m.has("error")) {
            throw GONE.contains(m.at("/error/message").asText()) ? new Gone(method) : new AssertionError(method + ": " + m.get("error"));
        }
        return m.get("result");
    }

    /** Size of the window in pixels; below 600 it is a phone's. */
    public Browser size(int width, int height) {
        send("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
        return this;
    }

    /** Whether pages are told that their reader wants nothing to move. */
    public Browser calm(boolean calm) {
        send("Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", calm ? "reduce" : "no-preference"))));
        return this;
    }

    /** Whether the page is laid out as for paper. */
    public void print(boolean paper) {
        send("Emulation.setEmulatedMedia", Map.of("media", paper ? "print" : ""));
    }

    public Browser go(String address) {
        load("about:blank");
        requests.clear();
        complaints.clear();
        load(address);
        return this;
    }

    private void load(String address) {
        loaded = new CompletableFuture<>();
        send("Page.navigate", Map.of("url", address));
        loaded.orTimeout(SECONDS, TimeUnit.SECONDS).join();
    }

    /** The value of an expression in the page. */
    public JsonNode eval(String script) {
        JsonNode r = send("Runtime.evaluate", Map.of("expression", script, "returnByValue", true, "awaitPromise", true));
        if (r.has("exceptionDetails")) {
            throw new AssertionError(script + ": " + r.get("exceptionDetails"));
        }
        return r.at("/result/value");
    }

    public String text(String script) {
        return eval(script).asText();
    }

    /** Waits until an expression is true, over as many new loads of the page as it takes. */
    public void await(String script) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        while (!holds(script)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("never true: " + script);
            }
            try {
                Thread.sleep(30);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    private boolean holds(String script) {
        try {
            return eval(script).asBoolean();
        } catch (Gone e) {
            return false;
        }
    }

    /** Presses a key as a person does. */
    public Browser key(String key) {
        boolean types = key.length() == 1;
        for (String type : List.of(types ? "keyDown" : "rawKeyDown", "keyUp")) {
            Map<String, Object> params = new java.util.TreeMap<>(Map.of("type", type, "key", key));
            params.putAll(types ? Map.of("text", key) : Map.of("windowsVirtualKeyCode", Map.of("Escape", 27, "Tab", 9, "Enter", 13, "ArrowRight", 39,
                    "ArrowLeft", 37).getOrDefault(key, 0), "code", key));
            if (key.equals("Enter") && type.equals("rawKeyDown")) {
                params.putAll(Map.of("type", "keyDown", "text", "\r"));
            }
            send("Input.dispatchKeyEvent", params);
        }
        return this;
    }

    /** Clicks in the middle of what a selector finds first. */
    public Browser click(String selector) {
        JsonNode at = eval("(() => { const e = document.querySelector(" + JSON.valueToTree(selector) + "); e.scrollIntoView({block: 'nearest', behavior: 'instant'});"
                + " const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()");
        for (String type : List.of("mousePressed", "mouseReleased")) {
            send("Input.dispatchMouseEvent", Map.of("type", type, "x", at.get(0).asDouble(), "y", at.get(1).asDouble(), "button", "left", "clickCount", 1,
                    "buttons", type.equals("mousePressed") ? 1 : 0));
        }
        return this;
    }

    /** Keeps a picture for a person to look at. */
    public void screenshot(String name) {
        keep(name + ".png", send("Page.captureScreenshot", Map.of("format", "png")));
    }

    /** The page as it prints, by its own rule of page size. */
    public byte[] pdf(String name) {
        return keep(name + ".pdf", send("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true)));
    }

    private static byte[] keep(String name, JsonNode result) {
        try {
            byte[] bytes = Base64.getDecoder().decode(result.get("data").asText());
            Files.write(Files.createDirectories(Path.of("target/screenshots")).resolve(name), bytes);
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the page's console was told, errors and refusals of the page's own policy among it. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** All that was asked for since the last page was opened, data addresses left out: they ask nobody. */
    public List<String> requests() {
        return requests.stream().filter(r -> !r.startsWith("data:") && !r.equals("about:blank")).toList();
    }

    @Override
    public void close() {
        process.destroy();
        try (Stream<Path> files = process.waitFor(10, TimeUnit.SECONDS) ? Files.walk(profile) : Stream.empty()) {
            files.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
        } catch (IOException | InterruptedException | UncheckedIOException e) {
            // What is left of a profile lies in the folder for temporary files and harms nobody.
        }
    }
}
