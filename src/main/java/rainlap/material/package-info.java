/**
 * What pieces are made of: kind, barrier, sizes, and where each number comes from.
 *
 * <p>The built-in catalogue is generic and names no makes. It is data, in {@code /materials/<kind>.json}: one object a
 * material, unknown keys refused, and a source stated for every number, mostly common practice. A file may add its own
 * materials; those carry no sources.
 */
package rainlap.material;
