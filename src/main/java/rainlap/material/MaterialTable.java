package rainlap.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rainlap.source.Source;

/** The materials of a catalogue as plain text: what they are, their numbers, and who says them. */
public final class MaterialTable {
    /** The longest line, as long as ids and names keep to the built-in lengths. */
    public static final int COLUMNS = 100;

    private static final String ROW = "%-23s %-13s %-7s %-6s %s";

    private final Catalogue catalogue;

    /** A table of everything in a catalogue. */
    public MaterialTable(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The lines, without line ends or trailing blanks. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(row("material", "kind", "barrier", "bond", "name"));
        lines.add(row("-".repeat(22), "-".repeat(12), "-".repeat(7), "-".repeat(6), "-".repeat(46)));
        for (MaterialKind kind : MaterialKind.values()) {
            for (Material material : catalogue.ofKind(kind)) {
                lines.add(row(
                        material.id(), kind.word(), material.layer().word(), material.bond().text(), material.name()));
                lines.addAll(details(material));
            }
        }
        lines.addAll(List.of("", "Sizes in mm unless said otherwise; common practice (no source) where no other is named."));
        return List.copyOf(lines);
    }

    private static String row(Object... cells) {
        return String.format(Locale.ROOT, ROW, cells).stripTrailing();
    }

    private static List<String> details(Material material) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder("   ");
        for (String part : numbers(material)) {
            if (line.length() + 2 + part.length() > COLUMNS) {
                lines.add(line.toString());
                line = new StringBuilder("   ");
            }
            line.append("  ").append(part);
        }
        if (!line.toString().isBlank()) {
            lines.add(line.toString());
        }
        bySource(material).forEach((source, keys) -> lines.add("     " + keys + ": " + source));
        return lines;
    }

    private static List<String> numbers(Material material) {
        List<String> parts = new ArrayList<>();
        Sizes sizes = material.sizes();
        add(parts, "roll", sizes.rollWidthMm(), "");
        add(parts, "length", sizes.rollLengthM(), " m");
        add(parts, "width", sizes.widthMm(), "");
        add(parts, "cover", sizes.coverWidthMm(), "");
        add(parts, "side lap", sizes.sideLapMm(), "");
        Profile profile = material.profile();
        add(parts, "depth", profile.depthMm(), "");
        add(parts, "fall", profile.fallDeg(), " deg");
        add(parts, "upstand", profile.upstandMm(), "");
        profile.endDams().ifPresent(dams -> parts.add("end dams " + dams.word()));
        add(parts, "end dam", profile.endDamMm(), "");
        add(parts, "drip", profile.dripMm(), "");
        add(parts, "hem", profile.hemMm(), "");
        add(parts, "turned down", profile.turnDownMm(), "");
        addWear(parts, material.durability());
        return parts;
    }

    private static void addWear(List<String> parts, Durability wear) {
        wear.metal().ifPresent(parts::add);
        wear.substance().ifPresent(s -> parts.add(s.inWords()));
        add(parts, "sun", wear.uvDays(), " days");
        wear.serviceC().ifPresent(c -> parts.add("service " + text(c.lowC()) + " to " + text(c.highC()) + " C"));
        wear.mesh().filter(mesh -> mesh).ifPresent(mesh -> parts.add("mesh"));
        wear.rots().filter(rots -> rots).ifPresent(rots -> parts.add("rots"));
    }

    private static void add(List<String> parts, String name, OptionalDouble value, String unit) {
        value.ifPresent(v -> parts.add(name + " " + text(v) + unit));
    }

    private static String text(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** The sources other than common practice, each with the keys it speaks for. */
    private static Map<String, String> bySource(Material material) {
        return new TreeMap<>(material.origins().entrySet().stream()
                .filter(e -> !e.getValue().equals(Source.commonPractice()))
                .collect(Collectors.groupingBy(
                        e -> e.getValue().text(), Collectors.mapping(Map.Entry::getKey, Collectors.joining(", ")))));
    }
}
