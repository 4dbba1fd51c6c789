package rainlap.water;
import java.util.List; import java.util.OptionalDouble;
import rainlap.joint.*; import rainlap.stack.Stack; import rainlap.geom.*; import rainlap.wall.Surface;
class Probe {
    public static void main(String[] a) {
        Stack s = RandomWall.of(Long.parseLong(a[0])).stack();
        Waters w = new Waters(s, new Drive(4000, 10000, 4000, OptionalDouble.empty(), List.of()));
        for (Ground g : w.grounds()) for (Cell c : g.cells) { if (!g.surface().isWall()) continue;
            long x = Grid.of(Double.parseDouble(a[1])), y = Grid.of(Double.parseDouble(a[2]));
            if (c.x0 <= x && x < c.x1 && c.lower.at(x) <= y && y < c.upper.at(x) && c.wet[0] != null)
                for (Wet t : c.wet[0]) if (t.from() <= x && x < t.to() && y <= t.top(x)) {
                    System.out.println("wet cost " + t.cost() + " " + t.running() + " x " + t.from() + ".." + t.to() + " top " + t.leftTop() + " " + t.rightTop());
                    for (Wet q = t; q != null; q = q.source()) System.out.println("    " + q.how() + " gap " + q.gap() + " cost " + q.cost() + " run " + q.running() + " x " + q.from() + ".." + q.to() + " top " + q.leftTop() + " " + q.rightTop() + " cell x " + q.cell().x0 + ".." + q.cell().x1 + " low " + q.cell().lower + " up " + q.cell().upper + " pile " + pile(q.cell().pile));
                }
        }
    }
    static String pile(Pile p) { String o = ""; for (int i = 0; i < p.depth(); i++) o += " M" + p.at(i); return o; }
}
