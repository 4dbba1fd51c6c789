package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rainlap.check.Rules;

class ViewCommandTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String CORNERED = Run.SOUND.replace("\"free\"", "\"external-corner\"");
    @TempDir
    Path folder;

    /** A running {@code view}. */
    record Running(Thread thread, ByteArrayOutputStream out, ByteArrayOutputStream err, AtomicReference<ExitStatus> status) implements AutoCloseable {
        static Running start(Path folder, String... args) {
            ByteArrayOutputStream out = new ByteArrayOutputStream(), err = new ByteArrayOutputStream();
            Surroundings around = new Surroundings(new ByteArrayInputStream(new byte[0]), new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8), folder, Map.of(), Rules.all(), 2);
            AtomicReference<ExitStatus> status = new AtomicReference<>();
            Thread t = new Thread(() -> status.set(Main.run(List.of(args), around)));
            t.start();
            Running r = new Running(t, out, err, status);
            await(() -> r.said().contains("Ctrl-C") || !t.isAlive());
            return r;
        }

        String said() {
            return out.toString(StandardCharsets.UTF_8);
        }

        String address() {
            return said().lines().filter(l -> l.startsWith("view: ")).findFirst().orElseThrow(() -> new AssertionError(said() + err)).substring(6);
        }

        @Override
        public void close() {
            thread.interrupt();
            try {
                thread.join(5000);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            assertFalse(thread.isAlive());
        }
    }

    static void await(BooleanSupplier what) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (!what.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, "waited too long");
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    private static String get(String address) {
        try {
            return CLIENT.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString()).body();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** The first line that answers a request written by hand. */
    private static String raw(String address, String request) throws IOException {
        URI uri = URI.create(address);
        try (Socket s = new Socket(InetAddress.getByName("127.0.0.1"), uri.getPort())) {
            s.getOutputStream().write(request.replace("PORT", Integer.toString(uri.getPort())).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
            return new String(s.getInputStream().readNBytes(12), StandardCharsets.UTF_8);
        }
    }

    @Test void servesThePageAndStops() {
        Run.file(folder, "hut.json", Run.SOUND);
        Running r = Running.start(folder, "view", "hut.json");
        assertTrue(get(r.address()).contains("<h1>Sound wall</h1>"));
        r.close();
        assertEquals(ExitStatus.DONE, r.status().get());
        assertTrue(r.said().endsWith("stopped\n"), r.said());
        assertEquals(List.of("hut.json"), Run.tree(folder));
    }

    @Test void drawsAnewShowsFaultsAndIsMended() throws IOException {
        String file = Run.file(folder, "hut.json", Run.SOUND);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            Files.writeString(Path.of(file), Run.SOUND.replace("Sound wall", "Other wall"));
            await(() -> get(r.address()).contains("<h1>Other wall</h1>"));
            Files.writeString(Path.of(file), Run.BAD);
            await(() -> get(r.address() + "problems").contains("2 problems"));
            String page = get(r.address());
            assertTrue(page.contains("Line 4, column ") && page.contains("<h1>Other wall</h1>"), page.substring(0, 200));
            Path beside = folder.resolve("new");
            Files.writeString(beside, Run.SOUND.replace("Sound wall", "Mended wall"));
            Files.move(beside, Path.of(file), StandardCopyOption.ATOMIC_MOVE);
            await(() -> get(r.address()).contains("<h1>Mended wall</h1>"));
            assertEquals("", get(r.address() + "problems"));
        }
    }

    @Test void aFileThatIsGoneIsSaidToBeSo() throws IOException {
        Path file = Path.of(Run.file(folder, "hut.json", Run.SOUND));
        try (Running r = Running.start(folder, "view", "hut.json")) {
            Files.delete(file);
            await(() -> get(r.address() + "problems").contains("hut.json: the file is not there</b> <span>put it back"));
            Files.createDirectory(file);
            await(() -> get(r.address() + "problems").contains("hut.json: a folder stands in its place"));
            assertTrue(r.err().toString(StandardCharsets.UTF_8).contains("hut.json: the file is not there"), r.err().toString(StandardCharsets.UTF_8));
            Files.delete(file);
            Files.writeString(file, "");
            await(() -> get(r.address() + "problems").contains("the file is empty"));
            Files.writeString(file, Run.SOUND);
            await(() -> get(r.address() + "problems").isEmpty());
            assertTrue(get(r.address()).contains("<h1>Sound wall</h1>"));
        }
    }

    /** The server of the JDK logs a warning where HEAD is answered as GET is. */
    @Test void headIsAnsweredLikeGetWithoutABodyAndQuietly() throws IOException, InterruptedException {
        Run.file(folder, "hut.json", Run.SOUND);
        List<String> logged = new CopyOnWriteArrayList<>();
        Handler ear = new Handler() {
            @Override public void publish(LogRecord log) {
                logged.add(log.getMessage());
            }

            @Override public void flush() {}

            @Override public void close() {}
        };
        Logger server = Logger.getLogger("com.sun.net.httpserver");
        server.addHandler(ear);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            for (String path : List.of("", "problems", "events", "should/1", "none")) {
                HttpRequest.Builder ask = HttpRequest.newBuilder(URI.create(r.address() + path)).timeout(Duration.ofSeconds(10));
                HttpResponse<String> head = CLIENT.send(ask.method("HEAD", HttpRequest.BodyPublishers.noBody()).build(), HttpResponse.BodyHandlers.ofString());
                assertEquals(path.equals("none") ? 404 : 200, head.statusCode(), path);
                assertEquals("", head.body(), path);
                if (!path.equals("events")) {
                    HttpResponse<String> whole = CLIENT.send(ask.GET().build(), HttpResponse.BodyHandlers.ofString());
                    assertEquals(whole.headers().firstValue("Content-Length").orElse("0"), head.headers().firstValue("Content-Length").orElse("0"), path);
                    assertEquals(whole.headers().firstValue("Content-Type"), head.headers().firstValue("Content-Type"), path);
                }
            }
        } finally {
            server.removeHandler(ear);
        }
        assertEquals(List.of(), logged);
    }

    /** Two walls and their building. */
    static void building(Path folder) {
        Run.file(folder, "north.json", CORNERED.replace("Sound wall", "North wall"));
        Run.file(folder, "east.json", CORNERED.replace("Sound wall", "East wall"));
        Run.file(folder, "hut.json", "{ \"rainlap\": 1, \"name\": \"Hut\", \"elevations\": [\n  { \"id\": \"north\", \"file\": \"north.json\" },\n  { \"id\": \"east\", \"file\": \"east.json\" } ], \"closed\": false }\n");
    }

    @Test void aBuildingHasAnIndexThatLeadsToItsWalls() throws IOException {
        building(folder);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            String index = get(r.address());
            assertTrue(index.contains("<h1>Hut</h1>") && index.contains("<a href=\"1/\">North wall</a>"), index.substring(0, 200));
            assertTrue(get(r.address() + "2/").contains("<h1>East wall</h1>"));
            assertEquals("HTTP/1.1 404", raw(r.address(), "GET /3/ HTTP/1.1\nHost: localhost:PORT\n\n"));
            assertEquals("HTTP/1.1 403", raw(r.address(), "GET /2/ HTTP/1.1\nHost: evil.example\n\n"));
            Run.file(folder, "east.json", CORNERED.replace("Sound wall", "Other wall"));
            await(() -> get(r.address()).contains("Other wall"));
            assertTrue(get(r.address() + "2/").contains("<h1>Other wall</h1>"));
            Run.file(folder, "east.json", Run.BAD);
            await(() -> get(r.address() + "1/problems").contains("2 problems"));
            assertTrue(get(r.address() + "problems").contains("east.json, line 4, column "), get(r.address() + "problems"));
            assertTrue(get(r.address() + "2/").contains("<h1>Other wall</h1>"), "the last good state stays");
            Run.file(folder, "east.json", CORNERED);
            await(() -> get(r.address()).contains("Sound wall"));
            Run.file(folder, "hut.json", "{");
            await(() -> get(r.address() + "problems").contains("hut.json, line 1, column "));
        }
    }

    @Test void beginsWithAFaultToo() throws IOException {
        String file = Run.file(folder, "hut.json", Run.BAD);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            assertTrue(get(r.address()).contains("Nothing is drawn yet"));
            Files.writeString(Path.of(file), Run.SOUND);
            await(() -> get(r.address()).contains("<h1>Sound wall</h1>"));
        }
    }

    @Test void answersItsOwnNameAlone() throws IOException {
        Run.file(folder, "hut.json", Run.SOUND);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            assertEquals("HTTP/1.1 200", raw(r.address(), "GET / HTTP/1.1\nHost: localhost:PORT\n\n"));
            for (String host : List.of("evil.example", "evil.example:PORT", "127.0.0.1", "localhost:1", "127.0.0.1:PORT.evil.example")) {
                assertEquals("HTTP/1.1 403", raw(r.address(), "GET / HTTP/1.1\nHost: " + host + "\n\n"), host);
                assertEquals("HTTP/1.1 403", raw(r.address(), "GET /events HTTP/1.1\nHost: " + host + "\n\n"), host);
            }
            assertEquals("HTTP/1.1 405", raw(r.address(), "POST / HTTP/1.1\nHost: localhost:PORT\nContent-Length: 0\n\n"));
            assertEquals("HTTP/1.1 200", raw(r.address(), "GET /should/1 HTTP/1.1\nHost: localhost:PORT\n\n"));
            assertEquals("HTTP/1.1 403", raw(r.address(), "GET /should/1 HTTP/1.1\nHost: evil.example\n\n"));
            for (String path : List.of("/should/x", "/should/", "/should/1/2", "/hut.json", "/../hut.json", "/%2e%2e/hut.json", "/index.html")) {
                assertEquals("HTTP/1.1 404", raw(r.address(), "GET " + path + " HTTP/1.1\nHost: localhost:PORT\n\n"), path);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"view hut.json --port 0|out of range", "view hut.json --port 70000|out of range",
        "view hut.json --stage half|stage", "view hut.json --practice none|practice", "view|missing"})
    void refuses(String line, String why) {
        Run.file(folder, "hut.json", Run.SOUND);
        Run run = Run.in(folder, line.split(" "));
        assertEquals(ExitStatus.USAGE, run.status(), run.err());
        assertTrue(run.err().contains(why), run.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"huf.json|there is no such file", "huf.json|did you mean", "walls|this is a folder"})
    void anInputThatCannotBeReadEndsAsItDoesInCheck(String file, String why) throws IOException {
        Run.file(folder, "hut.json", Run.SOUND);
        Files.createDirectories(folder.resolve("walls"));
        Run run = Run.in(folder, "view", file), check = Run.in(folder, "check", file);
        assertEquals(ExitStatus.BAD_INPUT, run.status(), run.err());
        assertEquals(check.status(), run.status());
        assertTrue(run.err().contains(why), run.err());
    }

    @Test void refusesAPortThatIsTaken() {
        Run.file(folder, "hut.json", Run.SOUND);
        try (Running r = Running.start(folder, "view", "hut.json")) {
            Run second = Run.in(folder, "view", "hut.json", "--port", Integer.toString(URI.create(r.address()).getPort()));
            assertEquals(ExitStatus.USAGE, second.status());
            assertTrue(second.err().contains("choose another --port"), second.err());
        }
    }
}
