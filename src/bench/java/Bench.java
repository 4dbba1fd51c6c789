import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import javax.management.JMException;
import javax.management.ObjectName;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.hprtree.HPRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.geom.Region;
import rainlap.paper.Edge;
import rainlap.paper.Mark;
import rainlap.paper.Pen;
import rainlap.paper.Polyline;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;
import rainlap.paper.SvgWriter;
import rainlap.paper.Tone;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Stage;

/**
 * Measures, never judges. CPU time of the one thread that works, median of the runs; everything in the same JVM, so that the ratios hold
 * on any machine. Prints a Markdown table. Run as DEVELOPERS.md says; the first argument is the largest number
 * of pieces, 100 000 where there is none and up to a million; further ones are the kinds of walls. The two-thread column is the one figure in clock time: it says something
 * only where nothing else runs.
 */
public final class Bench {
    private static final int A_MILLION = 1_000_000;
    private static final int[] SIZES = {100, 1_000, 10_000, 100_000, A_MILLION};
    private static final int PAIRWISE_UP_TO = 1_000;
    private static final GeometryFactory JTS = new GeometryFactory(new PrecisionModel(1));
    private static final Practice PRACTICE = Practices.find("common").orElseThrow();

    private Bench() {}

    public static void main(String[] args) throws Exception {
        int most = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
        System.out.println("| wall | pieces | self-join ms | in random order ms | check ms | check / self-join | / in random order | growth | two threads / one | pairwise overlay / self-join | heap kB a piece |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        List<String> kinds = args.length > 1 ? List.of(args).subList(1, args.length) : List.of("aligned", "jittered", "shuffled", "careless", "careless shuffled", "careless long");
        for (String kind : kinds) {
            double before = 0;
            int beforeSize = 0;
            for (int size : SIZES) {
                if (size <= most) {
                    before = row(kind, size, before, beforeSize);
                    beforeSize = facade(size, kind).pieces().size();
                }
            }
        }
        System.out.println();
        System.out.printf(Locale.ROOT, "SVG of 100 000 lines: %.2f times StAX on a buffered writer.%n", svgRatio(100_000));
    }

    private static Elevation facade(int size, String kind) {
        return kind.startsWith("careless") ? CarelessFacade.of(size, kind.replaceFirst("careless ?", "")) : Facade.of(size, kind);
    }

    /** In memory in the order of the file: a collector that copies lays what it finds in the order of the list that it comes to first, and then a list in random order may be the quicker one to walk. */
    private static Elevation settled(int size, String kind) {
        System.gc();
        Elevation e = facade(size, kind);
        System.gc();
        return e;
    }

    private static double row(String kind, int size, double before, int beforeSize) throws Exception {
        Elevation e = settled(size, kind);
        int n = e.pieces().size(), runs = size >= 100_000 ? 1 : 5;
        List<Region> regions = regions(e), mixed = new ArrayList<>(regions);
        Collections.shuffle(mixed, new Random(1));
        double join = median(runs, () -> selfJoin(regions)), mixedJoin = median(runs, () -> selfJoin(mixed));
        double check = median(runs, () -> Checker.check(e, Stage.WRAP, PRACTICE).weakPoints().size());
        String growth = before == 0 ? "" : String.format(Locale.ROOT, "%.2f", Math.log(check / before) / Math.log(n / (double) beforeSize));
        String pairwise = n > PAIRWISE_UP_TO ? "not run" : String.format(Locale.ROOT, "%.0f", median(3, () -> pairwise(e)) / join);
        String shared = size >= A_MILLION ? "not run" : String.format(Locale.ROOT, "%.2f", clock(runs, e, 2) / clock(runs, e, 1));
        System.out.printf(Locale.ROOT, "| %s | %d | %.2f | %.2f | %.1f | %.1f | %.1f | %s | %s | %s | %s |%n", kind, n, join, mixedJoin, check,
                check / join, check / mixedJoin, growth, shared, pairwise, n < 5_000 ? "too small" : String.format(Locale.ROOT, "%.2f", heapKb(e) / n));
        return check;
    }

    /** Milliseconds of CPU; several runs after one that is not counted, a single one as it comes. */
    private static double median(int runs, Callable<Object> work) throws Exception {
        double[] ms = new double[runs];
        for (int i = runs > 1 ? -1 : 0; i < runs; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.call();
            if (i >= 0) {
                ms[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
            }
        }
        Arrays.sort(ms);
        return ms[runs / 2];
    }

    /** The least clock time of a check on so many threads, in milliseconds. */
    private static double clock(int runs, Elevation e, int threads) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            Checker.check(e, Stage.WRAP, PRACTICE, Rules.all(), threads);
            least = Math.min(least, (System.nanoTime() - start) / 1e6);
        }
        return least;
    }

    /** What lies on the wall's own plane: reveals have planes of their own, in which much lies at one place. */
    private static List<Region> regions(Elevation e) {
        List<Region> out = new ArrayList<>();
        for (Piece p : e.pieces()) {
            p.shapes().stream().filter(s -> s.on().isWall()).forEach(s -> out.addAll(s.regions()));
        }
        return out;
    }

    private static Envelope envelope(Region r) {
        return new Envelope(r.box().minX(), r.box().maxX(), r.box().minY(), r.box().maxY());
    }

    /** The unit: every pair of envelopes that meet, by JTS's packed Hilbert tree. In random order it has more to wait for than in that of the file. */
    private static long selfJoin(List<Region> all) {
        HPRtree tree = new HPRtree();
        all.forEach(r -> tree.insert(envelope(r), r));
        tree.build();
        long[] pairs = {0};
        all.forEach(r -> tree.query(envelope(r), o -> pairs[0]++));
        return pairs[0];
    }

    /** What a general library would do: overlay each pair on the same grid and take the area. */
    private static double pairwise(Elevation e) {
        List<Region> all = regions(e);
        List<Geometry> shapes = all.stream().map(Bench::polygon).toList();
        HPRtree tree = new HPRtree();
        for (int i = 0; i < all.size(); i++) {
            tree.insert(envelope(all.get(i)), i);
        }
        tree.build();
        double[] sum = {0};
        for (int i = 0; i < all.size(); i++) {
            int me = i;
            tree.query(envelope(all.get(i)), o -> {
                if ((Integer) o < me) {
                    sum[0] += OverlayNG.overlay(shapes.get(me), shapes.get((Integer) o), OverlayNG.INTERSECTION,
                            JTS.getPrecisionModel()).getArea();
                }
            });
        }
        return sum[0];
    }

    private static Geometry polygon(Region r) {
        List<Coordinate> c = new ArrayList<>();
        r.shell().points().forEach(p -> c.add(new Coordinate(p.x(), p.y())));
        c.add(c.get(0).copy());
        return JTS.createPolygon(c.toArray(Coordinate[]::new));
    }

    /** Live objects that a check's result holds beyond the wall itself. */
    private static double heapKb(Elevation e) throws JMException {
        long before = live();
        Object result = Checker.check(e, Stage.WRAP, PRACTICE);
        double kb = (live() - before) / 1024.0;
        return result == null ? 0 : kb;
    }

    /** Bytes of live objects, counted one by one: what the heap has in use also holds what the collector has left unfilled, which here was up to half as much again. */
    private static long live() throws JMException {
        Object[] noOptions = {new String[0]};
        String histogram = (String) ManagementFactory.getPlatformMBeanServer().invoke(new ObjectName("com.sun.management:type=DiagnosticCommand"), "gcClassHistogram",
                noOptions, new String[] {String[].class.getName()});
        return Long.parseLong(histogram.substring(histogram.lastIndexOf("Total")).trim().split("\\s+")[2]);
    }

    private static double svgRatio(int lines) throws Exception {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            marks.add(Polyline.line(i % 400, i % 280 + 0.25, i % 390 + 10, i % 280 + 0.75, Edge.of(Pen.NARROW, Tone.INK)));
        }
        Sheet sheet = new Sheet(SheetSize.A3, "Lines", "en", marks);
        double ours = median(9, () -> ours(sheet)), stax = median(9, () -> stax(lines));
        return ours / stax;
    }

    private static int ours(Sheet sheet) throws IOException {
        StringWriter out = new StringWriter();
        SvgWriter.write(sheet, out);
        return out.getBuffer().length();
    }

    /** The same lines, written by hand on StAX. */
    private static int stax(int lines) throws XMLStreamException {
        StringWriter out = new StringWriter();
        XMLStreamWriter w = XMLOutputFactory.newInstance().createXMLStreamWriter(new BufferedWriter(out));
        w.writeStartDocument();
        w.writeStartElement("svg");
        for (int i = 0; i < lines; i++) {
            w.writeEmptyElement("path");
            w.writeAttribute("d", "M" + i % 400 + " " + (i % 280 + 0.25) + "L" + (i % 390 + 10) + " " + (i % 280 + 0.75));
            w.writeAttribute("fill", "none");
            w.writeAttribute("stroke", "#111");
            w.writeAttribute("stroke-width", "0.25");
        }
        w.writeEndElement();
        w.writeEndDocument();
        w.flush();
        w.close();
        return out.getBuffer().length();
    }
}
