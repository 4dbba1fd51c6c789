package rainlap.wall;

import rainlap.geom.Region;

/** A duct, pipe, cable, flue or fixing that passes the wall. */
public record Penetration(String id, String kind, Region region) {}
