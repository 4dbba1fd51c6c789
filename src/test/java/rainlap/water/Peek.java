package rainlap.water;
import java.nio.file.*;
import rainlap.file.*; import rainlap.stack.*; import rainlap.joint.*; import rainlap.wall.*; import rainlap.practice.*;
class Peek {
    public static void main(String[] a) throws Exception {
        for (String f : a) {
            Reading r = ElevationFile.read(Path.of(f));
            Elevation e = r.elevation().get();
            Practice p = Practices.find(e.practice().orElse("common")).get();
            Stack s = Stack.of(e, Stage.WRAP);
            Joints j = Joints.of(s);
            Trace t = Trace.of(s, j, Drive.of(e.exposure(), p, Stage.WRAP), DrivingRain.of(e.exposure()));
            System.out.println(f + " " + t.rain().map(DrivingRain::litresPerM2Hour) + " " + t.balance() + " area " + e.outline().region().areaMm2() / 1e6);
            for (int i = 0; i < j.all().size(); i++) System.out.println("   " + j.all().get(i).id() + " " + t.litresAtJoint(i));
            for (int i = 0; i < t.arrivals().size(); i++) if (t.arrivals().get(i).defences() == 0) System.out.println("   A " + t.arrivals().get(i).where() + " " + t.litresAtArrival(i) + " " + t.arrivals().get(i).path().get(1).why());
        }
    }
}
