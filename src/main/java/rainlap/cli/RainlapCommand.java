package rainlap.cli;

/** A command that can be run once its options are set. */
interface RainlapCommand {
    ExitStatus run();
}
