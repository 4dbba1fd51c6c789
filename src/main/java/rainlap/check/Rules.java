package rainlap.check;

import java.util.List;
import java.util.Optional;
import rainlap.rule.Rule;
import rainlap.rule.cavity.ClosedCavity;
import rainlap.rule.cavity.LevelBatten;
import rainlap.rule.cavity.OpenOutlet;
import rainlap.rule.cavity.ShallowCavity;
import rainlap.rule.edge.BeadOffTape;
import rainlap.rule.edge.FlatCapping;
import rainlap.rule.edge.LowCladding;
import rainlap.rule.edge.OpenTop;
import rainlap.rule.edge.ShortCappingLap;
import rainlap.rule.edge.ShortCladding;
import rainlap.rule.edge.ShortCornerWrap;
import rainlap.rule.edge.UncappedParapet;
import rainlap.rule.edge.UncoveredBase;
import rainlap.rule.edge.UntapedCorner;
import rainlap.rule.edge.UnwrappedCorner;
import rainlap.rule.face.LapTowardsWeather;
import rainlap.rule.face.NoRoomToMove;
import rainlap.rule.face.OpenFaceJoint;
import rainlap.rule.face.ShortSheetEndLap;
import rainlap.rule.face.ShortSheetSideLap;
import rainlap.rule.face.TrimAgainstFlow;
import rainlap.rule.lap.BareWall;
import rainlap.rule.lap.ButtJoint;
import rainlap.rule.lap.EndLapNearOpening;
import rainlap.rule.lap.LapTowardsTravel;
import rainlap.rule.lap.LapTowardsWind;
import rainlap.rule.lap.OpenGap;
import rainlap.rule.lap.ReverseLap;
import rainlap.rule.lap.ShortCourseLap;
import rainlap.rule.lap.ShortEndLap;
import rainlap.rule.lap.UnstaggeredLaps;
import rainlap.rule.material.AttackingPair;
import rainlap.rule.material.CorrodesWhereWet;
import rainlap.rule.material.RotsWhereWet;
import rainlap.rule.material.TapeOutOfService;
import rainlap.rule.material.TimberOnMetalBatten;
import rainlap.rule.material.TooLongInSun;
import rainlap.rule.opening.BareCorner;
import rainlap.rule.opening.BareThreshold;
import rainlap.rule.opening.ClosedSill;
import rainlap.rule.opening.FlashingInFront;
import rainlap.rule.opening.FlatFlashing;
import rainlap.rule.opening.FlatSill;
import rainlap.rule.opening.MissingHeadFlap;
import rainlap.rule.opening.MissingHeadFlashing;
import rainlap.rule.opening.NoBackDam;
import rainlap.rule.opening.NoDrip;
import rainlap.rule.opening.NoEndDam;
import rainlap.rule.opening.PanOverJamb;
import rainlap.rule.opening.ShortFlashing;
import rainlap.rule.opening.ShortFlashingLap;
import rainlap.rule.opening.ShortReturn;
import rainlap.rule.opening.ShortTurnDown;
import rainlap.rule.opening.ShortUpstand;
import rainlap.rule.penetration.NoCollar;
import rainlap.rule.penetration.UnsealedCollar;
import rainlap.rule.tape.NarrowTapeCover;
import rainlap.rule.tape.ReversedTapeLap;
import rainlap.rule.tape.TapeMissed;
import rainlap.rule.tape.TapeOrder;
import rainlap.rule.tape.UntapedJoint;
import rainlap.rule.transport.OverHeight;
import rainlap.rule.transport.OverWidth;
import rainlap.rule.water.LeaksAsDrawn;
import rainlap.rule.water.OneFailureAway;
import rainlap.rule.water.TrappedWater;
import rainlap.rule.water.WaterOnBatten;
import rainlap.rule.water.WayRoundAnEnd;

/** Every rule, sorted by id. A new rule is one line here; a test fails while it is missing. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new AttackingPair(),
            new BareCorner(),
            new BareThreshold(),
            new BareWall(),
            new BeadOffTape(),
            new ButtJoint(),
            new ClosedCavity(),
            new ClosedSill(),
            new CorrodesWhereWet(),
            new EndLapNearOpening(),
            new FlashingInFront(),
            new FlatCapping(),
            new FlatFlashing(),
            new FlatSill(),
            new LapTowardsTravel(),
            new LapTowardsWeather(),
            new LapTowardsWind(),
            new LeaksAsDrawn(),
            new LevelBatten(),
            new LowCladding(),
            new MissingHeadFlap(),
            new MissingHeadFlashing(),
            new NarrowTapeCover(),
            new NoBackDam(),
            new NoCollar(),
            new NoDrip(),
            new NoEndDam(),
            new NoRoomToMove(),
            new OneFailureAway(),
            new OpenFaceJoint(),
            new OpenGap(),
            new OpenOutlet(),
            new OpenTop(),
            new OverHeight(),
            new OverWidth(),
            new PanOverJamb(),
            new ReverseLap(),
            new ReversedTapeLap(),
            new RotsWhereWet(),
            new ShallowCavity(),
            new ShortCappingLap(),
            new ShortCladding(),
            new ShortCornerWrap(),
            new ShortCourseLap(),
            new ShortEndLap(),
            new ShortFlashing(),
            new ShortFlashingLap(),
            new ShortReturn(),
            new ShortSheetEndLap(),
            new ShortSheetSideLap(),
            new ShortTurnDown(),
            new ShortUpstand(),
            new TapeMissed(),
            new TapeOrder(),
            new TapeOutOfService(),
            new TimberOnMetalBatten(),
            new TooLongInSun(),
            new TrappedWater(),
            new TrimAgainstFlow(),
            new UncappedParapet(),
            new UncoveredBase(),
            new UnsealedCollar(),
            new UnstaggeredLaps(),
            new UntapedCorner(),
            new UntapedJoint(),
            new UnwrappedCorner(),
            new WaterOnBatten(),
            new WayRoundAnEnd()
    );

    private Rules() {}

    public static List<Rule> all() {
        return ALL;
    }

    public static Optional<Rule> find(String id) {
        return ALL.stream().filter(r -> r.info().id().equals(id)).findFirst();
    }
}
