package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.Shipped;
import rainlap.check.CheckResult;
import rainlap.check.WeakPoint;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.Sheet;
import rainlap.paper.Text;
import rainlap.rule.Evidence;

/** What is written beside a section is whole: the finding's own words or whole clauses of them, and nothing broken off. */
class SectionWordsTest {
    /** Lines enough for all notes. */
    private static final int ROOMY = 20;

    static Stream<Shipped> walls() {
        return Stream.concat(Shipped.all().stream(), Shipped.inBuildings().stream());
    }

    @ParameterizedTest
    @MethodSource("walls")
    void everySectionTellsAWholeClause(Shipped wall) {
        List<String> torn = new ArrayList<>();
        for (Sheets.Paper paper : Sheets.Paper.values()) {
            for (Sheet sheet : Drawn.of(wall.result(), paper)) {
                sections(sheet.marks(), (section, words) -> {
                    if (allowed(section, wall.result()).stream().noneMatch(words::contains) || words.contains("…")) {
                        torn.add(paper + " " + section.id().orElse("") + ": " + words);
                    }
                });
            }
        }
        assertEquals(List.of(), torn);
    }

    private interface Use {
        void of(Group section, String words);
    }

    private static void sections(List<Mark> marks, Use use) {
        for (Mark m : marks) {
            if (m instanceof Group g && g.id().filter(id -> id.matches("section-[A-Z]+")).isPresent()) {
                List<String> words = new ArrayList<>();
                words(g.marks(), words);
                use.of(g, String.join(" ", words).replace('\u00a0', ' '));
            } else if (m instanceof Group g) {
                sections(g.marks(), use);
            }
        }
    }

    /** Without those of the place as it should be. */
    private static void words(List<Mark> marks, List<String> out) {
        for (Mark m : marks) {
            if (m instanceof Group g && g.id().filter(id -> id.startsWith("mended-")).isEmpty()) {
                words(g.marks(), out);
            } else if (m instanceof Text t) {
                out.add(t.text());
            }
        }
    }

    /** The finding's words up to the end of a sentence, or to where a clause begins that only explains. */
    private static List<String> allowed(Group section, CheckResult result) {
        String number = section.data().stream().filter(d -> d.key().equals("weak")).findFirst().orElseThrow().value();
        String says = result.weakPoints().stream().filter(p -> number.equals(Integer.toString(p.number()))).findFirst().orElseThrow().finding().says();
        List<String> out = new ArrayList<>(List.of(says));
        for (String end : List.of(". ", ": ", "; ", ", so ")) {
            int at = says.indexOf(end);
            if (at > 0 && says.substring(0, at).chars().filter(c -> c == '(').count() == says.substring(0, at).chars().filter(c -> c == ')').count()) {
                out.add(says.substring(0, at) + ".");
            }
        }
        return out.stream().map(s -> s.replace('\u00a0', ' ')).toList();
    }

    /** A finding on a long place tells of pieces that one cut through it does not meet: it says so where there is room. */
    @ParameterizedTest
    @MethodSource("walls")
    void noPieceIsToldOfThatIsNotThere(Shipped wall) {
        Evidence e = wall.result().evidence();
        List<String> wrong = new ArrayList<>();
        for (WeakPoint p : wall.result().weakPoints()) {
            if (CloseUp.of(p, e).isEmpty()) {
                SectionPlan plan = new SectionPlanner(e).plan(p, 0.5);
                SectionView view = new SectionView(plan, e, PaperBox.ofSize(0, 0, 92.5, SectionView.PLUMB_HEIGHT), SectionCell.HEAD);
                String told = String.join(" ", view.told(view.drawCut(e), List.of(), ROOMY)).replace('\u00a0', ' ');
                boolean withFace = SectionPlanner.isBeyondTheWrap(p.finding(), e);
                p.finding().pieces().stream().filter(id -> told.matches(".*\\b" + Pattern.quote(id) + "\\b.*"))
                        .filter(id -> CutStack.of(e, plan.cut(), withFace).strands().stream().noneMatch(s -> s.piece().id().equals(id)))
                        .filter(id -> !told.matches(".*\\b" + Pattern.quote(id) + "\\b[^.]* not in this cut\\..*")).forEach(id -> wrong.add(p.number() + " " + id + ": " + told));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void aClauseThatWouldSayNothingByItselfIsKeptWhole() {
        String says = "The pan S4 (of W1: the left one) is not turned up: water that stands on it, or that wind pushes in, runs into the wall. Common practice asks for 8.";
        assertEquals(List.of(says, "The pan S4 (of W1: the left one) is not turned up: water that stands on it, or that wind pushes in, runs into the wall.",
                "The pan S4 (of W1: the left one) is not turned up."), SectionWords.shortenings(says));
        assertEquals(List.of("P2 passes M3 at +320, x 1800, without a collar, so water gets in.", "P2 passes M3 at +320, x 1800, without a collar."),
                SectionWords.shortenings("P2 passes M3 at +320, x 1800, without a collar, so water gets in."));
    }
}
