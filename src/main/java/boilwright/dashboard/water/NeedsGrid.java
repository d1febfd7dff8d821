package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.dashboard.pages.FigureGrid;
import boilwright.dashboard.text.WindowText;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the cooling needs: flows, chiller, pump, tank and ice, either order of plumbing, and cures. */
final class NeedsGrid extends VBox {

    private final FigureGrid grid = new FigureGrid();
    private final VBox cures = new VBox();

    NeedsGrid() {
        getStyleClass().add("water-needs");
        cures.getStyleClass().add("water-cures");
        getChildren().addAll(grid, cures);
    }

    void show(WaterAnswer water) {
        grid.clear();
        add("water.needs.duty", WaterWords.power(water.restDutyW() + water.pumpHeatW()));
        add("water.needs.peak", WaterWords.power(water.peakDutyW() + water.pumpHeatW()));
        for (WaterAnswer.LeastFlow least : water.leastFlows()) {
            String governs =
                    water.governing().filter(least::equals).isPresent() ? WindowText.say("water.needs.governs") : "";
            String flow = flow(least.flowM3PerS());
            grid.add(WindowText.say("water.needs.least", least.limit().title()), flow + governs);
        }
        water.chillerW().ifPresent(w -> add("water.needs.chiller", WaterWords.power(w)));
        water.pumpFlowM3PerS()
                .ifPresent(flow -> add(
                        "water.needs.pump",
                        WindowText.say(
                                "water.needs.pump.at",
                                WaterWords.flow(flow),
                                WaterWords.pressure(water.pumpHeadPa().orElse(0)))));
        water.tank()
                .ifPresent(tank -> grid.add(
                        WindowText.say("water.needs.tank", WaterWords.temperature(tank.limitK())),
                        tank.runTimeS().isPresent()
                                ? QuantityWriter.writeAuto(tank.runTimeS().getAsDouble(), Dimension.TIME)
                                : WindowText.say("water.needs.tank.always")));
        if (water.iceKg() > 0) {
            grid.add(
                    WindowText.say("water.needs.ice", QuantityWriter.writeAuto(water.sessionS(), Dimension.TIME)),
                    QuantityWriter.writeAuto(water.iceKg(), Dimension.MASS));
        }
        water.turnedRound().ifPresent(turned -> add("water.needs.turned", order(turned)));
        cures.getChildren().clear();
        for (String cure : water.cures()) {
            Label label = new Label(WindowText.say("water.needs.cure", cure));
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
            cures.getChildren().add(label);
        }
    }

    private static String flow(OptionalDouble m3PerS) {
        if (m3PerS.isEmpty()) {
            return WindowText.say("water.needs.never");
        }
        return m3PerS.getAsDouble() > WaterAnswer.HARDLY_ANY_M3_PER_S
                ? WaterWords.flow(m3PerS.getAsDouble())
                : WindowText.say("water.needs.hardly-any");
    }

    private static String order(SteadyState turned) {
        String out = WaterWords.temperature(turned.waterOutK().orElse(Double.NaN));
        return turned.capK().isPresent()
                ? WindowText.say(
                        "water.needs.turned.cap",
                        out,
                        WaterWords.temperature(turned.capK().getAsDouble()))
                : WindowText.say("water.needs.turned.out", out);
    }

    private void add(String key, String figure) {
        grid.add(WindowText.say(key), figure);
    }
}
