package boilwright.choice;

import boilwright.answers.CheckAnswer;
import boilwright.choice.SourceRow.Session;
import boilwright.gasflow.ButaneProperties;
import boilwright.numerics.Roots;
import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fuel, cartridges and their chill, from the run of a burner's check. */
final class GasTrial {
    /** Fuel of a usual screw-on cartridge, kg (encyclopaedia entry "gas cartridge": 230 g). */
    static final double USUAL_CARTRIDGE_KG = 0.230;
    /** Beyond this no burner is looked at, W. */
    private static final double MOST_FUEL_W = 1e5;

    private GasTrial() {}

    static Optional<GasUse> of(
            Rig rig, CheckAnswer check, double heatOnS, Optional<Session> session, ParameterValues values) {
        if (!(rig.heatSource() instanceof HeatSource.GasBurner burner)) {
            return Optional.empty();
        }
        double cartridge =
                burner.cartridge().map(HeatSource.Cartridge::fuelMassKg).orElse(USUAL_CARTRIDGE_KG);
        OptionalDouble fuel = session.isPresent()
                ? OptionalDouble.of(session.get().totalJ() / ButaneProperties.GROSS_HEATING_VALUE)
                : OptionalDouble.empty();
        int cartridges = fuel.isPresent() ? (int) Math.ceil(fuel.getAsDouble() / cartridge) : 0;
        OptionalDouble least = leastFuelW(rig, check.needed(), values);
        OptionalDouble chills = OptionalDouble.empty();
        OptionalDouble chilled = OptionalDouble.empty();
        OptionalDouble coldest = OptionalDouble.empty();
        OptionalDouble empty = OptionalDouble.empty();
        if (burner.cartridge().isPresent()) {
            RunResult run = check.warmup();
            double[] can =
                    run.series().column(SeriesQuantity.CARTRIDGE_TEMPERATURE).values();
            coldest = Arrays.stream(can).min();
            OptionalDouble at = SourceTrial.time(run, EventKind.FUEL_EMPTY);
            empty = at.isPresent() ? OptionalDouble.of(at.getAsDouble() - heatOnS) : at;
            int below = firstShort(run, heatOnS, least, at);
            if (below >= 0) {
                chills = OptionalDouble.of(
                        run.series().column(SeriesQuantity.TIME).values()[below] - heatOnS);
                chilled = OptionalDouble.of(can[below]);
            }
        }
        return Optional.of(new GasUse(fuel, cartridge, cartridges, least, chills, chilled, coldest, empty));
    }

    /** The first record after lighting at which the flow is below what full jets need while there is fuel; -1 for none. */
    private static int firstShort(RunResult run, double heatOnS, OptionalDouble leastW, OptionalDouble emptyS) {
        double[] times = run.series().column(SeriesQuantity.TIME).values();
        double[] input = run.series().column(SeriesQuantity.SOURCE_INPUT).values();
        for (int i = 0; i < times.length; i++) {
            boolean burning = times[i] > heatOnS && times[i] < emptyS.orElse(Double.POSITIVE_INFINITY);
            if (burning && leastW.isPresent() && input[i] < leastW.getAsDouble()) {
                return i;
            }
        }
        return -1;
    }

    /** Fuel power of a regulated burner on this boiler at which the weakest jet is just full. */
    private static OptionalDouble leastFuelW(Rig rig, NeededState needed, ParameterValues values) {
        double face = needed.state().outerFaceK();
        double oil = needed.state().liquidTemperatureK();
        double most = excess(rig, values, MOST_FUEL_W, face, oil, needed.heatNeededW());
        return most < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Roots.bracketed(
                        p -> excess(rig, values, p, face, oil, needed.heatNeededW()),
                        0,
                        MOST_FUEL_W,
                        1e-9,
                        0,
                        "the least fuel power"));
    }

    private static double excess(
            Rig rig, ParameterValues values, double fuelW, double faceK, double oilK, double neededW) {
        Rig regulated = rig.withHeatSource(new HeatSource.GasBurner(fuelW, Optional.empty()));
        return DeliveredHeat.atFullPower(regulated, values).watts(faceK, oilK) - neededW;
    }
}
