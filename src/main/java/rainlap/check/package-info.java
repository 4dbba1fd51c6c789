/** The list of rules, the run over them, and the weak points in order of rank. */
package rainlap.check;
