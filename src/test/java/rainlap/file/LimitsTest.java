package rainlap.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Each limit holds on one side and not on the other; large ones are tried at a smaller size, through the same code. */
class LimitsTest {
    private static final String WALL = "\"wall\":{\"outline\":[[0,0],[900,0],[900,900],[0,900]],\"edges\":[\"base\",\"free\",\"free\",\"free\"]}";

    private static String file(String rest) {
        return "{\"rainlap\":1," + WALL + rest + "}";
    }

    private static List<String> problems(String json, Limits limits) {
        return ElevationFile.read("x", json.getBytes(StandardCharsets.UTF_8), limits).problems().stream().map(Problem::what).toList();
    }

    private static void assertLimit(String within, String beyond, Limits limits, String says) {
        assertEquals(List.of(), problems(within, limits));
        List<String> said = problems(beyond, limits);
        assertEquals(1, said.size(), said::toString);
        assertTrue(said.get(0).contains(says), said::toString);
    }

    private static Limits with(int bytes, int depth, int values, int pieces) {
        Limits s = Limits.STATED;
        return new Limits(bytes, depth, values, pieces, s.layers(), s.points(), s.linePoints(), s.holes(), s.tucks(), s.idLength(), s.textLength(), s.wktLength(), s.problems());
    }

    private static Limits small(int points, int holes, int tucks, int wkt, int problems) {
        Limits s = Limits.STATED;
        return new Limits(s.bytes(), s.depth(), s.values(), s.pieces(), 5, points, points, holes, tucks, s.idLength(), s.textLength(), wkt, problems);
    }

    @Test
    void statedLimits() {
        assertEquals(new Limits(64 * 1024 * 1024, 32, 12_000_000, 1_000_000, 10_000, 20_000, 200, 10_000, 1_000, 100, 1_000, 4_000_000, 100), Limits.STATED);
    }

    @Test
    void bytes() {
        String json = file("");
        assertLimit(json, json + " ", with(json.length(), 32, 1000, 10), "larger than " + json.length() + " bytes");
    }

    @Test
    void depth() {
        UnaryOperator<String> nested = n -> "{\"rainlap\":1,\"name\":" + "[".repeat(Integer.parseInt(n)) + "]".repeat(Integer.parseInt(n)) + "}";
        assertTrue(problems(nested.apply("31"), Limits.STATED).stream().noneMatch(p -> p.contains("deep")));
        assertEquals(List.of("objects and lists stand more than 32 deep inside one another"), problems(nested.apply("32"), Limits.STATED));
        assertEquals(1, problems(nested.apply("2000000"), Limits.STATED).size(), "no stack runs over");
    }

    @Test
    void values() {
        String json = file("");
        int count = 1 + 1 + 1 + 1 + 4 * 3 + 1 + 4;
        assertEquals(List.of(), problems(json, with(1000, 32, count, 10)));
        assertEquals(List.of("the file holds more than " + (count - 1) + " values"), problems(json, with(1000, 32, count - 1, 10)));
    }

    private static String pieces(int n) {
        return file(IntStream.range(0, n).mapToObj(i -> "{\"id\":\"p" + i + "\",\"material\":\"foil-membrane\",\"rect\":[0,0,1,1]}")
                .collect(Collectors.joining(",", ",\"pieces\":[", "]")));
    }

    @Test
    void pieceCount() {
        assertLimit(pieces(5), pieces(6), with(10_000, 32, 1000, 5), "\"pieces\" has 6 entries");
    }

    @Test
    void layersOnOneSpot() {
        assertLimit(pieces(5), pieces(6), small(9, 3, 5, 100, 10), "more than 5 pieces lie on one spot");
        String apart = pieces(6).replace("\"p5\",\"material\":\"foil-membrane\",\"rect\":[0,0,", "\"p5\",\"material\":\"foil-membrane\",\"rect\":[5,0,");
        assertEquals(List.of(), problems(apart, small(9, 3, 5, 100, 10)), "six pieces, five of them on one spot");
    }

    private static String line(int n) {
        return ring(n).replace("foil-membrane", "foil-tape-60").replace("\"ring\"", "\"line\"");
    }

    @Test
    void pointsOfALine() {
        assertLimit(line(9), line(10), small(9, 5, 5, 100, 10), "\"line\" has 10 entries");
        assertEquals(List.of(), problems(line(200), Limits.STATED));
        assertEquals(1, problems(line(201), Limits.STATED).size());
    }

    @Test
    void detailOfWellKnownText() {
        UnaryOperator<String> wkt = t -> file(",\"pieces\":[{\"id\":\"a\",\"material\":\"foil-membrane\",\"wkt\":\"" + t + "\"}]");
        String four = "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0))", five = "POLYGON ((0 0, 9 0, 9 9, 4 12, 0 9, 0 0))";
        assertLimit(wkt.apply(four), wkt.apply(five), small(4, 5, 5, 100, 10), "\"wkt\" is too detailed");
        String one = "MULTIPOLYGON (((0 0, 9 0, 9 9, 0 0)))", two = "MULTIPOLYGON (((0 0, 9 0, 9 9, 0 0)), ((20 0, 29 0, 29 9, 20 0)))";
        assertLimit(wkt.apply(one), wkt.apply(two), small(9, 1, 5, 100, 10), "\"wkt\" has 2 polygons");
        String hole = "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 2 1, 2 2, 1 1))", holes = "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 2 1, 2 2, 1 1), (4 4, 5 4, 5 5, 4 4))";
        assertLimit(wkt.apply(hole), wkt.apply(holes), small(9, 1, 5, 100, 10), "\"wkt\" is too detailed");
    }

    private static String ring(int n) {
        return file(IntStream.range(0, n).mapToObj(i -> "[" + i + "," + (i == 0 || i == n - 1 ? 1 : 0) + "]")
                .collect(Collectors.joining(",", ",\"pieces\":[{\"id\":\"a\",\"material\":\"foil-membrane\",\"ring\":[", "]}]")));
    }

    @Test
    void pointsOfARing() {
        assertLimit(ring(9), ring(10), small(9, 5, 5, 100, 10), "\"ring\" has 10 entries");
    }

    @Test
    void fullRingIsReadInReasonableTime() {
        assertEquals(List.of(), problems(ring(20_000), Limits.STATED));
        assertEquals(1, problems(ring(20_001), Limits.STATED).size());
    }

    private static String holes(int n) {
        return file(IntStream.range(0, n).mapToObj(i -> "[[" + (2 * i + 1) + ",1],[" + (2 * i + 2) + ",1],[" + (2 * i + 2) + ",2]]")
                .collect(Collectors.joining(",", ",\"pieces\":[{\"id\":\"a\",\"material\":\"foil-membrane\",\"ring\":[[0,0],[90000,0],[90000,9],[0,9]],\"holes\":[", "]}]")));
    }

    @Test
    void holesOfARing() {
        assertLimit(holes(3), holes(4), small(9, 3, 5, 100, 10), "\"holes\" has 4 entries");
        assertEquals(List.of(), problems(holes(10_000), Limits.STATED));
    }

    private static String tucks(int n) {
        String all = pieces(n);
        String names = IntStream.range(0, n).mapToObj(i -> "\"p" + i + "\"").collect(Collectors.joining(","));
        return all.substring(0, all.length() - 2) + ",{\"id\":\"last\",\"material\":\"head-flashing\",\"rect\":[0,0,1,1],\"under\":[" + names + "]}]}";
    }

    @Test
    void tucksOfAPiece() {
        assertLimit(tucks(4), tucks(5), small(9, 3, 4, 100, 10), "\"under\" has 5 entries");
    }

    @Test
    void lengthOfIds() {
        UnaryOperator<String> named = id -> file(",\"pieces\":[{\"id\":\"" + id + "\",\"material\":\"foil-membrane\",\"rect\":[0,0,1,1]}]");
        assertLimit(named.apply("艇".repeat(100)), named.apply("艇".repeat(101)), Limits.STATED, "\"id\" has 101 characters");
        assertLimit(named.apply("🚲".repeat(100)), named.apply("🚲".repeat(101)), Limits.STATED, "\"id\" has 101 characters");
    }

    @Test
    void lengthOfTexts() {
        assertLimit(file(",\"name\":\"" + "n".repeat(1000) + "\""), file(",\"name\":\"" + "n".repeat(1001) + "\""), Limits.STATED,
                "\"name\" has 1001 characters");
    }

    @Test
    void lengthOfWellKnownText() {
        String start = ",\"pieces\":[{\"id\":\"a\",\"material\":\"foil-membrane\",\"wkt\":\"POLYGON ((0 0, 9 0, 9 9, 0 0))", end = "\"}]";
        int n = "POLYGON ((0 0, 9 0, 9 9, 0 0))".length();
        assertLimit(file(start + end), file(start + " " + end), small(9, 3, 4, n, 10), "\"wkt\" has " + (n + 1) + " characters");
    }

    @Test
    void coordinates() {
        UnaryOperator<String> at = x -> file(",\"pieces\":[{\"id\":\"a\",\"material\":\"foil-membrane\",\"ring\":[[0,0],[" + x + ",0],[0,1]]}]");
        assertLimit(at.apply("10000000"), at.apply("10000000.01"), Limits.STATED, "x in \"ring\" must be within 10000000 mm (10 km)");
        assertLimit(at.apply("-10000000"), at.apply("-10000001"), Limits.STATED, "10 km");
    }

    @Test
    void listedProblems() {
        Limits three = small(9, 3, 4, 100, 3);
        assertEquals(3, problems("{\"a\":1,\"rainlap\":1,\"b\":1," + WALL + ",\"c\":1}", three).size());
        assertEquals("1 more problem is not listed", problems("{\"a\":1,\"rainlap\":1,\"b\":1," + WALL + ",\"c\":1,\"d\":1}", three).get(3));
    }

    @Test
    void numbersWithManyDigits() {
        UnaryOperator<String> at = x -> file(",\"exposure\":{\"wind_m_s\":" + x + "}");
        assertEquals(List.of(), problems(at.apply("0." + "0".repeat(900) + "1"), Limits.STATED));
        assertEquals(List.of("a number of more than 1000 characters"), problems(at.apply("0." + "0".repeat(1100) + "1"), Limits.STATED));
    }
}
