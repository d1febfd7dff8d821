package boilwright.thermal;

import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.ContactBody;
import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import boilwright.rig.TopCap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Rigs of believable size for tests; invented data. */
public final class TestRigs {
    private static final Room ROOM = new Room(293.15, 101325);

    private TestRigs() {}

    /** Small four-stage glass pump with a 0.022 m2 heated area, over any source. */
    public static Rig fourStageGlass(HeatSource source) {
        double heated = 0.022;
        return new Rig(
                "four-stage glass",
                "",
                "704-type",
                150e-6,
                new Boiler(
                        Material.BOROSILICATE,
                        0.13,
                        0.0025,
                        heated,
                        heated,
                        0.020,
                        0,
                        0.05,
                        0.9,
                        OptionalDouble.empty()),
                new Column(List.of(
                        new Column.Segment(0.12, 0.052, 0.002, Material.BOROSILICATE, 0.9),
                        new Column.Segment(0.18, 0.045, 0.002, Material.BOROSILICATE, 0.9))),
                List.of(
                        new Stage("first", 0.12, 0.052, 0.0020),
                        new Stage("second", 0.18, 0.046, 0.0021),
                        new Stage("third", 0.24, 0.046, 0.0022),
                        new Stage("top", 0.30, 0.046, 0.0026)),
                new Body(Material.BOROSILICATE, 0.085, 0.0025, 0.04, 0.9, 0.9),
                Optional.empty(),
                source,
                new Schedule(List.of(new Schedule.Power(0, 1))),
                new Foreline.GivenPressure(7),
                new Cooling(
                        291.15,
                        1.5e-3 / 60,
                        List.of(new Cooling.Jacket(List.of("first", "second", "third", "top"), 0.005, 0.0025)),
                        OptionalDouble.empty()),
                ROOM,
                Limits.USUAL,
                Map.of());
    }

    /** An open burner of this fuel power. */
    public static HeatSource flame(double fuelW) {
        return new HeatSource.GasBurner(fuelW, Optional.empty());
    }

    /** A 1.5 kW hot plate that touches the boiler badly. */
    public static HeatSource poorPlate() {
        return new HeatSource.ContactPlate(
                1500,
                new ContactBody(
                        HeatSource.Contact.DOMED_GLASS,
                        0.0133,
                        OptionalDouble.of(60),
                        1200,
                        723.15,
                        HeatSource.Thermostat.PROPORTIONAL,
                        0.03,
                        0.8,
                        0,
                        0.05));
    }

    /** A 150 mm metal pump with a clamped heater. */
    public static Rig metal150(double powerW) {
        return new Rig(
                "150 mm metal",
                "",
                "704-type",
                450e-6,
                new Boiler(
                        Material.STAINLESS,
                        0.15,
                        0.008,
                        0.0177,
                        0.0265,
                        0.035,
                        0.02,
                        0.05,
                        0.3,
                        OptionalDouble.of(3.5)),
                new Column(List.of(new Column.Segment(0.28, 0.085, 0.002, Material.ALUMINIUM, 0.1))),
                List.of(
                        new Stage("lower", 0.12, 0.085, 0.0016),
                        new Stage("middle", 0.20, 0.085, 0.0022),
                        new Stage("top", 0.28, 0.090, 0.0034)),
                new Body(Material.STAINLESS, 0.154, 0.003, 0.06, 0.3, 0.3),
                Optional.of(new TopCap(0.008, 0.003, Material.COPPER)),
                new HeatSource.ClampedHeater(
                        powerW,
                        new ContactBody(
                                HeatSource.Contact.MACHINED_METAL,
                                0.016,
                                OptionalDouble.empty(),
                                900,
                                773.15,
                                HeatSource.Thermostat.PROPORTIONAL,
                                0.02,
                                0.5,
                                0.02,
                                0.06)),
                new Schedule(List.of(new Schedule.Power(0, 1))),
                new Foreline.GivenPressure(7),
                new Cooling(
                        291.15,
                        2e-3 / 60,
                        List.of(
                                new Cooling.CapCoil(0.008, 0.3, 20, Cooling.Place.PLAIN),
                                new Cooling.SolderedCoil(List.of("top", "middle", "lower"), 0.008, 3.5, 20)),
                        OptionalDouble.of(2500)),
                ROOM,
                Limits.USUAL,
                Map.of());
    }
}
