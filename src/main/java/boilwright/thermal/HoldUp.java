package boilwright.thermal;

import boilwright.heattransfer.NusseltFilm;
import boilwright.rig.Parameter;

/** Oil that is not in the boiler while the pump runs: films on walls and column, wetting of cap and walls. */
final class HoldUp {
    private HoldUp() {}

    /** Share of the cold charge that is in the boiler. */
    static double liquidFraction(PumpModel model, double[] y) {
        double held = 0;
        WallGeometry g = model.wallGeometry;
        double perimeter = Math.PI * model.rig.body().innerDiameterM();
        double running = 0;
        for (int k = g.zones - 1; k >= 0; k--) {
            double above = running;
            running += model.walls.condensed[k];
            held += film(model, y[model.layout.walls + k], (above + running) / 2 / perimeter, g.innerAreaM2[k]);
        }
        if (g.lower >= 0) {
            held += film(model, y[model.layout.walls + g.lower], running / perimeter, g.innerAreaM2[g.lower]);
        }
        double columnFilm = 0;
        for (int j = model.geometry.cells - 1; j >= 0; j--) {
            columnFilm += model.column.cellTake[j];
            held += film(
                    model,
                    y[model.layout.column + j],
                    columnFilm / (Math.PI * model.geometry.boreM[j]),
                    model.geometry.innerAreaM2[j]);
        }
        double wetted = g.cap >= 0 ? g.innerAreaM2[g.cap] : 0;
        for (int k = 0; k < g.zones; k++) {
            wetted += g.innerAreaM2[k];
        }
        held += wetted * model.parameters.get(Parameter.WETTING_FILM) * model.fluid.liquidDensity(model.roomK);
        return (y[model.layout.oilMass] - held) / model.chargeKg;
    }

    private static double film(PumpModel model, double wallK, double flowPerWidth, double areaM2) {
        if (flowPerWidth <= 0) {
            return 0;
        }
        double density = model.fluid.liquidDensity(wallK);
        return areaM2 * density * NusseltFilm.filmThickness(model.fluid.liquidViscosity(wallK), flowPerWidth, density);
    }
}
