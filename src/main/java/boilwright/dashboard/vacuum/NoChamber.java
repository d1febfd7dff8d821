package boilwright.dashboard.vacuum;

import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.GasSide;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.TypicalValues;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the page shows of a rig without a chamber: that it has none, and a chamber to start from. */
final class NoChamber extends VBox {
    private static final double LITRES_M3 = 5e-3;
    private static final double WALL_M2 = 0.2;

    NoChamber(PageContext context) {
        setId("vacuum-none");
        getStyleClass().add("section");
        Label words = new Label(WindowText.say("vacuum.none"));
        words.setWrapText(true);
        Button describe = new Button(WindowText.say("vacuum.none.describe"));
        describe.setId("vacuum-describe");
        describe.setOnAction(
                event -> context.session().edit(WindowText.say("vacuum.none.edit"), NoChamber::withChamber));
        getChildren().addAll(words, describe);
    }

    /** A small chamber on the pump; every field of it marked as a guess. */
    static Rig withChamber(Rig rig) {
        String wall = rig.body().material().isGlass() ? "borosilicate" : "stainless-steel";
        GasSide.Chamber chamber = new GasSide.Chamber(
                LITRES_M3,
                TypicalValues.SINCE_AIR_S,
                GasSide.Exposure.HUMID_AIR,
                List.of(new GasSide.Surface(wall, WALL_M2, false)),
                List.of(new GasSide.Seal("fkm", rig.body().innerDiameterM(), 0.005)),
                0);
        GasSide.GaugeKind kind = GasSide.GaugeKind.COLD_CATHODE;
        Rig described = rig.withVacuum(new GasSide(
                chamber,
                List.of(),
                Optional.of(new GasSide.Gauge(GasSide.Gauge.AT_CHAMBER, kind, kind.lowestPa(), kind.highestPa(), 1)),
                List.of(),
                OptionalDouble.empty()));
        Set<String> guesses = new LinkedHashSet<>(rig.guesses());
        RigPaths.of(described).stream()
                .filter(path -> path.startsWith("vacuum."))
                .filter(path -> !path.equals("vacuum.target"))
                .forEach(guesses::add);
        return described.withGuesses(guesses);
    }
}
