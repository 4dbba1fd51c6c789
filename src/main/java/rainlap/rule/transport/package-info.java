/**
 * Rules of a building that travels by road: its height and width as loaded, against the law of the road that the file names.
 *
 * <p>A building travels where its exposure states a speed of towing above 0, or a road. Height is from the road ({@code wall.ground}) to the top of the
 * outline; width is that of an elevation that does not travel along its own length, that is without {@code leading}. What is not on the elevation, such as
 * the roof and its overhang, mirrors, lamps and the vehicle itself, is not measured.
 */
package rainlap.rule.transport;
