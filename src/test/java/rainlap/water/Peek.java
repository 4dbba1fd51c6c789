package rainlap.water;
import java.nio.file.*;
import rainlap.file.*; import rainlap.stack.*; import rainlap.wall.*; import rainlap.practice.*;
class Peek {
    public static void main(String[] a) throws Exception {
        for (String f : a) {
            Reading r = ElevationFile.read(Path.of(f));
            Elevation e = r.elevation().get();
            Practice p = Practices.find(e.practice().orElse("common")).get();
            Stack s = Stack.of(e, Stage.WRAP);
            Drive d = Drive.of(e.exposure(), p, Stage.WRAP);
            Trace t = Trace.of(s, d);
            System.out.println(f + " rise " + d.rise()/100.0 + " creep " + d.creep()/100.0);
            for (Reach x : t.reach()) if (x.defences()<1) System.out.printf("  %d %-10s %10.0f mm2  %s%n", x.defences(), x.surface().name(), x.areaMm2(), rainlap.geom.Wkt.ofRegions(x.where()).substring(0, Math.min(220, rainlap.geom.Wkt.ofRegions(x.where()).length())));
            for (Arrival x : t.arrivals()) if (x.defences()<2) { System.out.println("  A" + x.defences() + " " + x.surface().name() + " " + rainlap.geom.Wkt.ofLine(x.where())); for (Step q : x.path()) System.out.println("       " + q.on().name() + " " + rainlap.geom.Wkt.ofLine(q.where()) + " " + q.why() + (q.failure()?" !":"")); }
            for (Standing x : t.trapped()) System.out.println("  T " + x.over() + " on " + x.layer() + " " + rainlap.geom.Wkt.ofLine(x.where()) + " " + x.path().get(x.path().size()-1).why());
        }
    }
}
