package rainlap.material;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * A published table of how ready metals are to corrode where they touch in the wet. The tables known do not agree, so each stands for
 * itself and nothing is averaged. Of two metals the one with the higher figure corrodes.
 *
 * @param name as a sentence calls it
 * @param source who prints it
 * @param millivolts figures from the table's own zero, the readiest highest; a metal that the table does not list is missing
 */
public record GalvanicTable(String name, Source source, Map<Metal, Integer> millivolts) {
    /** The greatest difference outdoors, in millivolts, exactly this included; indoors the same texts allow 250, in controlled rooms 500. */
    public static final int ALLOWED_MV = 150;
    /** Who allows it. It is printed with the anodic index; for the other table it is taken over. */
    public static final Source ALLOWED = new Source("Anodic index, MIL-F-14072 style", "", "0.15 V outdoors", Known.PUBLISHED_SECONDARY);

    /** Volts below gold. */
    public static final GalvanicTable ANODIC_INDEX = new GalvanicTable("the anodic index",
            new Source("Anodic index, MIL-F-14072 style", "", "table VI", Known.PUBLISHED_SECONDARY), table(
                    "gold 0, silver 150, nickel 300, titanium 300, copper 350, brass 400, bronze 400, stainless steel 500, tin 600, lead 700, steel 850, "
                    + "iron 850, aluminium 900, cast aluminium 950, cadmium 950, galvanised steel 1200, zinc 1250, magnesium 1750"));

    /** Volts against copper; those below zero are nobler. */
    public static final GalvanicTable AGAINST_COPPER = new GalvanicTable("the potentials against copper",
            new Source("Potentials against copper, citing NASA-STD-6012 and MIL-STD-889D", "", "", Known.PUBLISHED_SECONDARY), table(
                    "gold -440, stainless steel 316 -350, titanium -320, stainless steel -320, silver -220, nickel -140, graphite -100, copper 0, brass 80, "
                    + "bronze 200, tin 230, lead 270, cast iron 380, steel 430, aluminium 520, cadmium 530, iron 535, zinc 830, galvanised steel 830, "
                    + "magnesium 1380"));

    /** Both, in the order in which findings name them. */
    public static final List<GalvanicTable> ALL = List.of(ANODIC_INDEX, AGAINST_COPPER);

    public GalvanicTable {
        millivolts = Collections.unmodifiableMap(new EnumMap<>(millivolts));
    }

    private static Map<Metal, Integer> table(String lines) {
        Map<Metal, Integer> out = new EnumMap<>(Metal.class);
        for (String line : lines.split(", ")) {
            int at = line.lastIndexOf(' ');
            out.put(Metal.find(line.substring(0, at)).orElseThrow(), Integer.valueOf(line.substring(at + 1)));
        }
        return out;
    }

    /** By how many millivolts the first is the readier to corrode, below zero where the second is; empty where one is not listed. */
    public OptionalInt readier(Metal first, Metal second) {
        Integer a = millivolts.get(first), b = millivolts.get(second);
        return a == null || b == null ? OptionalInt.empty() : OptionalInt.of(a - b);
    }
}
