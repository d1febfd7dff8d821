package boilwright.dashboard.drawing;

import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.RunPart;
import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Rigs of any number of stages, and moments of them with chosen figures, for the tests of the drawing. */
final class DrawnRigs {
    private static final int CELLS = 12;
    private static final double COLD_K = 293.15;
    private static final double HOT_K = 500;

    private DrawnRigs() {}

    /** A metal rig with so many stages, with or without cap and water. */
    static Rig of(int stages, boolean cap, boolean water) {
        List<Stage> jets = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int k = 0; k < stages; k++) {
            jets.add(new Stage("s" + (k + 1), 0.1 + 0.06 * k, 0.08, 0.003));
            names.add(0, "s" + (k + 1));
        }
        double top = jets.get(stages - 1).heightM();
        List<Cooling.Element> elements = water ? List.of(new Cooling.SolderedCoil(names, 0.008, 4, 50)) : List.of();
        return new Rig(
                "Drawn",
                "",
                "704-type",
                3e-4,
                new Boiler(Material.STAINLESS, 0.14, 0.004, 0.015, 0.03, 0.03, 0.02, 2, 0.4, OptionalDouble.empty()),
                new Column(List.of(new Column.Segment(top, 0.07, 0.002, Material.STAINLESS, 0.4))),
                jets,
                new Body(Material.STAINLESS, 0.14, 0.002, 0.05, 0.4, 0.4),
                cap ? Optional.of(new TopCap(0.008, 0.003, Material.COPPER)) : Optional.empty(),
                new HeatSource.ImmersedElement(1500, 0.01),
                new Schedule(List.of(new Schedule.Power(0, 1))),
                new Foreline.GivenPressure(5),
                new Cooling(291.15, water ? 3e-5 : 0, elements, OptionalDouble.empty()),
                new Room(COLD_K, 101325),
                Limits.USUAL,
                Map.of());
    }

    /** A moment at which every jet carries this share of its full flow; 0 for a cold pump. */
    static MomentState moment(Rig rig, double share, double liquid) {
        boolean lit = share > 0;
        double height = rig.column().heightM();
        double[] heights = new double[CELLS];
        double[] cells = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            heights[i] = height * (i + 0.5) / CELLS;
        }
        Arrays.fill(cells, lit ? HOT_K : COLD_K);
        List<JetState> jets = rig.stages().stream()
                .map(stage -> new JetState(
                        stage.name(),
                        lit ? 310 : COLD_K,
                        lit ? 1e-3 : 0,
                        share,
                        lit,
                        share >= JetState.FULL_SHARE,
                        lit ? 1 : 0,
                        rig.cooling().elements().isEmpty() ? Double.NaN : 300))
                .toList();
        return new MomentState(
                lit ? RunPart.REST : RunPart.WARMUP,
                0,
                lit ? HOT_K : COLD_K,
                lit ? HOT_K + 40 : COLD_K,
                Double.NaN,
                heights,
                cells,
                jets,
                rig.topCap().isPresent() ? 300 : Double.NaN,
                rig.cooling().elements().isEmpty() ? Double.NaN : 301,
                lit ? 130 : 5,
                lit ? 3e-3 : 0,
                lit ? 1200 : 0,
                lit ? 900 : 0,
                lit ? 300 : 0,
                liquid,
                lit ? height : 0);
    }
}
