package boilwright.thermal;

import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeSystem;
import boilwright.numerics.StabilizedExplicit;
import boilwright.numerics.Tolerances;
import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The gas burner of the program under a vessel of a chosen base, or with a cartridge at a chosen flow. */
public final class FlameBench {
    private final Rig rig;
    private final FlameSource flame;
    private final BoilerWall wall;

    private FlameBench(double fuelW, double baseM2, Optional<HeatSource.Cartridge> cartridge, double roomPa) {
        Rig glass = TestRigs.fourStageGlass(new HeatSource.GasBurner(fuelW, cartridge));
        Boiler pot = new Boiler(
                Material.STAINLESS,
                Math.sqrt(4 * baseM2 / Math.PI),
                0.001,
                baseM2,
                baseM2,
                3 * baseM2,
                0,
                1,
                0.3,
                OptionalDouble.empty());
        rig = new Rig(
                "burner",
                "",
                glass.fluidId(),
                glass.chargeM3(),
                pot,
                glass.column(),
                glass.stages(),
                glass.body(),
                Optional.empty(),
                glass.heatSource(),
                glass.schedule(),
                glass.foreline(),
                glass.cooling(),
                new Room(293.15, roomPa),
                glass.limits(),
                Map.of());
        ParameterValues values = ParameterValues.of(rig);
        wall = new BoilerWall(rig, ThermalProbe.fluid(rig.fluidId()), values);
        flame = new FlameSource(rig, rig.heatSource(), values, wall.halfResistance());
    }

    /** A burner of this fuel power under a vessel with this base area. */
    public static FlameBench under(double fuelW, double baseM2) {
        return new FlameBench(fuelW, baseM2, Optional.empty(), 101325);
    }

    /** A burner of this power with a warm cartridge, in a room of this pressure. */
    public static FlameBench onCartridge(double fuelW, HeatSource.Cartridge cartridge, double roomPa) {
        return new FlameBench(fuelW, 0.02, Optional.of(cartridge), roomPa);
    }

    /** Heat into a vessel whose outer face has this temperature, less what its sides lose beyond the test's, W. */
    public double netW(double faceK) {
        double delivered = flame.steadyDeliveredW(faceK, faceK);
        return delivered - wall.outsideLossW(faceK, true, true);
    }

    /** Share of the fuel power that reaches a vessel at 100 C. */
    public double efficiency() {
        return flame.steadyDeliveredW(373.15, 373.15) / rig.heatSource().ratedPowerW();
    }

    /** Flow of the burner at a cartridge temperature over that with a warm cartridge. */
    public double flowShare(double cartridgeK) {
        double[] y = {cartridgeK, 1};
        flame.setLevel(1, Double.POSITIVE_INFINITY);
        flame.evaluate(y, 0, 373.15, 373.15, new double[2]);
        return flame.inputW() / rig.heatSource().ratedPowerW();
    }

    /**
     * Cartridge temperature, K, and fuel, kg, after a time.
     *
     * @param seconds time from a full, warm cartridge
     * @param regulated whether a valve opens as the cartridge cools, so that the flow stays the rated one
     */
    public double[] burn(double seconds, boolean regulated) {
        double[] start = new double[2];
        flame.initial(start, 0, 293.15);
        OdeSystem cartridge = new OdeSystem() {
            @Override
            public int size() {
                return 2;
            }

            @Override
            public boolean isAutonomous() {
                return true;
            }

            @Override
            public void derivative(double t, double[] y, double[] rates) {
                flame.setLevel(regulated ? 1 / flowShare(y[0]) : 1, Double.POSITIVE_INFINITY);
                flame.evaluate(y, 0, 373.15, 373.15, rates);
            }
        };
        return new OdeDriver(cartridge, new StabilizedExplicit(), new Tolerances(1e-9, 1e-6, 1e-9))
                .run(0, start, seconds)
                .state();
    }
}
