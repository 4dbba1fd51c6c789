/**
 * Rules of tape: joints without it, stretches it misses, cover too narrow, and the order of strips round an opening.
 *
 * <p>Tape is asked of joints of membrane with membrane, by {@link rainlap.rule.MembraneJoints#tapeAsked}. A reverse lap is asked for none:
 * it has to be laid the other way. An untaped butt or gap is named by its own rule, whose remedy brings the tape.
 */
package rainlap.rule.tape;
