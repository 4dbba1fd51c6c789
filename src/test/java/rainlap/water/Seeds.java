package rainlap.water;
import java.util.List; import java.util.OptionalDouble;
import rainlap.joint.*; import rainlap.stack.*;
class Seeds {
    public static void main(String[] a) {
        int from = Integer.parseInt(a[0]), to = Integer.parseInt(a[1]); int shown = 0, bad = 0; long tg = 0, tt = 0;
        for (long seed = from; seed < to; seed++) {
            Drawn w = RandomWall.of(seed);
            Stack s = w.stack();
            if (a.length > 4 && TraceAgainstGrid.isUpright(s) != a[4].equals("up")) continue;
            if (a.length > 5 && !w.elevation().openings().isEmpty()) continue;
            long t0 = System.nanoTime();
            TraceAgainstGrid g = new TraceAgainstGrid(s, 4000, 10000, Double.parseDouble(a[2]));
            long t1 = System.nanoTime();
            Trace t;
            try { t = Trace.of(s, Joints.of(s), new Drive(4000, 10000, 4000, OptionalDouble.empty(), List.of()), java.util.Optional.of(new DrivingRain(10, List.of()))); } catch (RuntimeException e) { System.out.println("seed " + seed + " " + e); e.printStackTrace(System.out); continue; }
            Balance b = t.balance().orElseThrow(); if (Math.abs(b.fallen() - b.accounted()) > 1e-6 || Math.abs(b.fallen() - 96) > 1e-6) System.out.println(seed + " " + b);
            tg += t1 - t0; tt += System.nanoTime() - t1;
            List<TraceAgainstGrid.Disagreement> d = a.length > 6 ? g.lasting(4000, 10000, Double.parseDouble(a[2]), t::defences) : g.with(t::defences);
            if (!d.isEmpty()) { bad++; if (shown++ < Integer.parseInt(a[3])) System.out.println((TraceAgainstGrid.isUpright(s) ? "UPRIGHT " : "SLOPED ") + g.report(seed, d)); }
        }
        System.out.println("bad " + bad + " grid ms " + tg / 1000000 + " trace ms " + tt / 1000000);
    }
}
