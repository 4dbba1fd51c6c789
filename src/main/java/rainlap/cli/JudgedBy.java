package rainlap.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import rainlap.file.PracticeReading;
import rainlap.file.Problem;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** By what walls are judged: the stage, and a practice where it is not to be the file's own. */
final class JudgedBy {
    @Option(names = "--stage", paramLabel = "STAGE", defaultValue = "wrap",
            description = "wrap (the hold point before cladding) or finished. Default: wrap.")
    String stage;

    @Option(names = "--practice", paramLabel = "ID", description = "Judge by this practice instead of the file's own; or by one of your own, by its file;"
            + " see: rainlap practices.")
    String practice;
    private Optional<Practice> chosen = Optional.empty();

    Stage stage() {
        return Stage.find(stage).orElseThrow(() -> Refusal.unknown("stage", stage, Arrays.stream(Stage.values()).map(Stage::word).toList()));
    }

    /** Finds or reads the practice that is asked for, if one is; says what is wrong with its file. */
    List<Problem> readPractice(Surroundings around) {
        if (practice == null) {
            return List.of();
        }
        PracticeReading reading = PracticesCommand.read(around, practice);
        chosen = reading.practice();
        return reading.problems();
    }

    /** The practice's own file, if it has one. */
    Optional<String> practiceFile() {
        return Optional.ofNullable(practice).filter(PracticesCommand::isFile);
    }

    /** The practice that is asked for, or the one the elevation names, or the common one. */
    Practice practiceFor(Elevation e) {
        return chosen.orElseGet(() -> Practices.find(e.practice().orElse(Practices.COMMON)).orElseThrow());
    }
}
