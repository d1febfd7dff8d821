package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.controlsfx.control.CheckComboBox;
import org.controlsfx.control.RangeSlider;
import org.controlsfx.control.SearchableComboBox;
import org.controlsfx.control.SegmentedButton;
import org.controlsfx.control.StatusBar;
import org.controlsfx.control.ToggleSwitch;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The two looks: no style sheet is left wanting, and what is written can be read. */
class ThemeTest {
    /** Least contrast of text, WCAG 2.1, success criterion 1.4.3, level AA. */
    static final double LEAST_CONTRAST = 4.5;

    private static final List<String> WRITTEN_IN =
            List.of("fg-default", "fg-muted", "danger-fg", "warning-fg", "success-fg");

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void controlsFromElsewhereFindEveryColour() {
        try (ToolkitLog log = new ToolkitLog()) {
            for (Theme theme : Theme.values()) {
                onWindowsThread(() -> {
                    VBox all = new VBox(
                            new SearchableComboBox<String>(),
                            new CheckComboBox<String>(),
                            new RangeSlider(),
                            new ToggleSwitch(),
                            new SegmentedButton(),
                            new StatusBar());
                    Scene scene = new Scene(all, 400, 300);
                    theme.dress(scene);
                    all.applyCss();
                    all.layout();
                });
            }
            assertThat(log.warnings()).isEmpty();
        }
    }

    @Test
    void aMissingColourWouldBeHeardOf() {
        try (ToolkitLog log = new ToolkitLog()) {
            onWindowsThread(() -> {
                Button button = new Button();
                button.setStyle("-fx-background-color: -no-such-colour;");
                Scene scene = new Scene(new StackPane(button));
                Theme.LIGHT.dress(scene);
                scene.getRoot().applyCss();
            });
            assertThat(log.warnings()).isNotEmpty();
        }
    }

    @Test
    void everyColourOfTextStandsOutFromItsGround() {
        for (Theme theme : Theme.values()) {
            for (String ground : List.of("bg-default", "bg-subtle")) {
                for (String ink : WRITTEN_IN) {
                    double contrast = contrast(colour(theme, ink), colour(theme, ground));
                    assertThat(contrast).as(theme + " " + ink + " on " + ground).isGreaterThan(LEAST_CONTRAST);
                }
            }
        }
    }

    private static Color colour(Theme theme, String name) {
        Color[] found = new Color[1];
        onWindowsThread(() -> {
            Label label = new Label("x");
            label.setStyle("-fx-text-fill: -color-" + name + ";");
            Scene scene = new Scene(new StackPane(label));
            theme.dress(scene);
            scene.getRoot().applyCss();
            found[0] = (Color) label.getTextFill();
        });
        return found[0];
    }

    /** Contrast ratio as WCAG 2.1 defines it; muted colours of the themes are opaque. */
    static double contrast(Color one, Color other) {
        double[] light = {luminance(one), luminance(other)};
        Arrays.sort(light);
        return (light[1] + 0.05) / (light[0] + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static void onWindowsThread(Runnable what) {
        WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            what.run();
            return null;
        });
    }
}
