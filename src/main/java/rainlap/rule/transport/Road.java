package rainlap.rule.transport;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import rainlap.source.Known;
import rainlap.source.Source;

/**
 * Whose law holds for the size of what goes by road. Lengths in whole mm. Where a law sets no height, or only from memory, common practice speaks.
 *
 * @param ids how files name it; the first is its word
 * @param name in a sentence
 * @param height greatest; empty where the law sets none
 * @param width greatest; empty where none was read
 */
record Road(List<String> ids, String name, Optional<Most> height, Optional<Most> width) {
    /** A greatest length, exactly this included, and who sets it. */
    record Most(int mm, Source source) {}

    private static final Source DIRECTIVE = new Source("Directive 96/53/EC", "", "annex I", Known.PUBLISHED_SECONDARY);
    private static final Source FEDERAL = new Source("23 CFR 658.15", "", "102 inches", Known.PUBLISHED_SECONDARY);
    private static final Source TERRITORY = new Source("ACT Road Transport Regulations", "2010", "section 9", Known.PUBLISHED);
    private static final Source MEMORY = new Source("Road law", "", "", Known.FROM_MEMORY);

    /** What builders keep to whatever the law: a building for the road is at most 4 m high. */
    static final Most COMMON_HEIGHT = new Most(4000, Source.commonPractice());

    static final List<Road> ALL = List.of(
            new Road(List.of("eu"), "the European Union", most(4000, DIRECTIVE), most(2550, DIRECTIVE)),
            new Road(List.of("uk", "gb"), "the United Kingdom", Optional.empty(), most(2550, MEMORY)),
            new Road(List.of("us", "usa"), "the United States", Optional.empty(), most(2590, FEDERAL)),
            new Road(List.of("au"), "Australia", most(4300, TERRITORY), most(2500, TERRITORY)),
            new Road(List.of("nz"), "New Zealand", most(4300, MEMORY), most(2550, MEMORY)));

    private static Optional<Most> most(int mm, Source source) {
        return Optional.of(new Most(mm, source));
    }

    /** The words of all roads, and {@code any}: the strictest of all. */
    static List<String> words() {
        return Stream.concat(ALL.stream().map(r -> r.ids.get(0)), Stream.of("any")).toList();
    }

    /** The road of these words; {@code any} is the strictest of all that were read. */
    static Optional<Road> find(String words) {
        String plain = words.strip().toLowerCase(Locale.ROOT);
        if (plain.equals("any")) {
            return Optional.of(new Road(List.of("any"), "any road", strictest(ALL.stream().map(Road::height)), strictest(ALL.stream().map(Road::width))));
        }
        return ALL.stream().filter(r -> r.ids.contains(plain)).findFirst();
    }

    private static Optional<Most> strictest(Stream<Optional<Most>> all) {
        List<Most> read = all.flatMap(Optional::stream).filter(m -> m.source().known() != Known.FROM_MEMORY).toList();
        OptionalInt least = read.stream().mapToInt(Most::mm).min();
        return read.stream().filter(m -> m.mm() == least.orElse(-1)).findFirst();
    }
}
