/**
 * The commands. Alone in the product this package prints, reads the environment and the clock-free surroundings of a run, and ends the
 * process; all else it calls is a function of its arguments.
 *
 * <p>{@link rainlap.cli.Main#run} is a function of arguments and streams that returns an {@link rainlap.cli.ExitStatus}. A command that
 * cannot go on throws {@link rainlap.cli.Refusal}, which becomes one message and a status; anything else that is thrown is our fault
 * and becomes status 1.
 *
 * <p><b>Files.</b> Everything is read and every output's place is looked at before any work ({@link rainlap.cli.Outputs}). Outputs are
 * written aside and moved when all are complete. A file that is already there is replaced only if Rainlap wrote it, which
 * {@link rainlap.cli.Signature} tells.
 */
package rainlap.cli;
