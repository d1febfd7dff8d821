package boilwright.dashboard.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Stored;
import boilwright.dashboard.Keyboard;
import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.model.Timelines;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.image.PixelReader;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** The pump as it is drawn: to scale at any size, with the moment's figures, and told part by part. */
class PumpDrawingTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final int[][] SIZES = {{600, 600}, {1280, 720}, {3840, 2160}};
    private static final int[][] ODD_SIZES = {{40, 30}, {150, 520}, {280, 520}, {400, 560}, {900, 200}};

    private DrawingStage stage;
    private PumpDrawing drawing;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @BeforeEach
    void open() {
        stage = DrawingStage.of(600, 600);
        drawing = stage.drawing();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    static List<String> demos() {
        return RigReader.demoNames();
    }

    private static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.workingFluids(), Set.of());
    }

    private void draw(Rig rig, MomentState moment) {
        stage.show(() -> {
            drawing.setRig(rig, FLUIDS.find(rig.fluidId()));
            drawing.setMoment(moment);
        });
    }

    /** Cold, the front climbing, at rest, cooling, at the end. */
    private static List<MomentState> moments(String demo) {
        RunTimeline line = Timelines.demo(demo);
        return List.of(
                line.at(0),
                line.at(0.3 * line.restStartS()),
                line.at((line.restStartS() + line.cooldownStartS()) / 2),
                line.at(line.cooldownStartS() + 400),
                line.at(line.endS()));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theRatiosOfTheRigsMeasuresHoldAtEverySize(String demo) {
        Rig rig = demo(demo);
        draw(rig, moments(demo).get(2));
        double boiler = rig.boiler().innerDiameterM() + 2 * rig.boiler().wallThicknessM();
        for (int[] size : SIZES) {
            stage.resize(size[0], size[1]);
            Map<Part, Bounds> places = DrawingStage.on(() -> drawing.picture().places());
            Bounds column = places.get(Part.of(Part.Kind.COLUMN));
            double pxPerM = column.getHeight() / rig.column().heightM();
            double widest = rig.column().segments().stream()
                    .mapToDouble(s -> s.innerDiameterM() + 2 * s.wallThicknessM())
                    .max()
                    .orElseThrow();
            assertThat(column.getWidth() / pxPerM).isCloseTo(widest, within(1e-9));
            assertThat(places.get(Part.of(Part.Kind.BOILER)).getWidth() / pxPerM)
                    .isCloseTo(boiler, within(1e-9));
            double foot = places.get(Part.of(Part.Kind.COLUMN)).getMaxY();
            Sheet sheet = DrawingStage.on(() -> drawing.picture().sheet());
            for (int k = 0; k < rig.stages().size(); k++) {
                assertThat((foot - sheet.y(rig.stages().get(k).heightM())) / pxPerM)
                        .isCloseTo(rig.stages().get(k).heightM(), within(1e-9));
                Bounds jet = places.get(new Part(Part.Kind.JET, k));
                assertThat(jet.getWidth() / pxPerM).isCloseTo(rig.body().innerDiameterM(), within(1e-9));
            }
            assertThat(places.values()).allSatisfy(b -> {
                assertThat(b.getMinX()).isGreaterThanOrEqualTo(0);
                assertThat(b.getMinY()).isGreaterThanOrEqualTo(0);
                assertThat(b.getMaxX()).isLessThanOrEqualTo(size[0]);
                assertThat(b.getMaxY()).isLessThanOrEqualTo(size[1]);
            });
            assertThat(column.getHeight())
                    .as("the pump takes a good part of the sheet")
                    .isGreaterThan(0.2 * size[1]);
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void coldJetsAreDark(String demo) {
        Rig rig = demo(demo);
        draw(rig, moments(demo).get(0));
        for (int k = 0; k < rig.stages().size(); k++) {
            assertThat(jetInk(rig, k)).as("jet %s", k + 1).isZero();
        }
    }

    @Test
    void jetsAtRestAreDrawnAndThoseOfAPumpTooColdAreNot() {
        for (String demo : demos()) {
            MomentState rest = moments(demo).get(2);
            Rig rig = demo(demo);
            draw(rig, rest);
            for (int k = 0; k < rig.stages().size(); k++) {
                if (rest.jets().get(k).lit()) {
                    assertThat(jetInk(rig, k)).isPositive();
                } else {
                    assertThat(jetInk(rig, k)).isZero();
                }
            }
        }
        assertThat(moments("mirror-club").get(2).jets()).allMatch(JetState::lit);
        assertThat(moments("neon-workshop").get(2).jets()).noneMatch(JetState::lit);
    }

    @Test
    void aJetIsAsStrongAsItsFlow() {
        Rig rig = DrawnRigs.of(3, true, true);
        stage.resize(1280, 720);
        double before = 0;
        for (double share : new double[] {0.05, 0.3, 0.6, 0.95}) {
            draw(rig, DrawnRigs.moment(rig, share, 1));
            double ink = jetInk(rig, 1);
            assertThat(ink).as("share %s", share).isGreaterThan(1.1 * before);
            before = ink;
        }
    }

    /** How far the pixels just below a nozzle, between it and the wall, are from the page's colour; left, where no label of a jet
     * leads to. */
    private double jetInk(Rig rig, int k) {
        PixelReader pixels = stage.picture().getPixelReader();
        JetShape jet = PumpShape.of(rig).jets.get(k);
        Sheet sheet = DrawingStage.on(() -> drawing.picture().sheet());
        Color paper = pixels.getColor(1, 1);
        double room = rig.body().innerDiameterM() / 2 - jet.outerM();
        double drop = jet.throatM() - jet.reachM();
        double sum = 0;
        for (int i = 1; i <= 30; i++) {
            for (int j = 1; j <= 30; j++) {
                double x = sheet.x(-jet.outerM() - (0.25 + 0.4 * i / 30) * room);
                double y = sheet.y(jet.throatM() - (0.1 + 0.6 * j / 30) * drop);
                Color at = pixels.getColor((int) x, (int) y);
                sum += Math.abs(at.getRed() - paper.getRed())
                        + Math.abs(at.getGreen() - paper.getGreen())
                        + Math.abs(at.getBlue() - paper.getBlue());
            }
        }
        return sum;
    }

    @Test
    void theOilLevelFollowsTheCharge() {
        Rig rig = DrawnRigs.of(3, true, true);
        stage.resize(1280, 720);
        BoilerShape boiler = BoilerShape.of(rig);
        double before = Double.NEGATIVE_INFINITY;
        for (double share : new double[] {1, 0.7, 0.4}) {
            draw(rig, DrawnRigs.moment(rig, 0, share));
            Sheet sheet = DrawingStage.on(() -> drawing.picture().sheet());
            double wanted = sheet.y(-boiler.heightM() + boiler.oilDepthM(share * rig.chargeM3()));
            double found = surfaceY(sheet, boiler);
            assertThat(found).isCloseTo(wanted, within(2.0)).isGreaterThan(before);
            before = found;
        }
    }

    /** Where the page ends and the oil begins, on an upright through the boiler beside what stands in its middle. */
    private double surfaceY(Sheet sheet, BoilerShape boiler) {
        PixelReader pixels = stage.picture().getPixelReader();
        Color paper = pixels.getColor(1, 1);
        int x = (int) sheet.x(0.8 * boiler.radiusM());
        int y = (int) sheet.y(-boiler.heightM()) - 2;
        while (y > 0 && !pixels.getColor(x, y).equals(paper)) {
            y--;
        }
        return y + 1.0;
    }

    @ParameterizedTest
    @MethodSource("demos")
    void labelsNeverOverlapAndStayOnTheSheet(String demo) {
        List<int[]> sizes = new ArrayList<>(List.of(SIZES));
        sizes.addAll(List.of(ODD_SIZES));
        List<MomentState> moments = moments(demo);
        for (int[] size : sizes) {
            stage.resize(size[0], size[1]);
            // At rest there is most to tell; the other moments with the large counts.
            for (MomentState moment :
                    Counts.firstOf(moments.get(2), moments.get(0), moments.get(1), moments.get(3), moments.get(4))) {
                draw(demo(demo), moment);
                assertClear(size);
            }
        }
    }

    private void assertClear(int[] size) {
        List<Bounds> labels = DrawingStage.on(() -> drawing.picture().labels());
        if (size[0] >= 400 && size[1] >= 500) {
            assertThat(labels).hasSizeGreaterThan(8);
        }
        for (int i = 0; i < labels.size(); i++) {
            Bounds one = labels.get(i);
            assertThat(one.getMinX()).isGreaterThanOrEqualTo(0);
            assertThat(one.getMaxX()).isLessThanOrEqualTo(size[0]);
            assertThat(one.getMinY()).isGreaterThanOrEqualTo(0);
            assertThat(one.getMaxY()).isLessThanOrEqualTo(size[1]);
            for (int j = i + 1; j < labels.size(); j++) {
                Bounds other = labels.get(j);
                boolean apart = one.getMaxY() <= other.getMinY()
                        || other.getMaxY() <= one.getMinY()
                        || one.getMaxX() <= other.getMinX()
                        || other.getMaxX() <= one.getMinX();
                assertThat(apart)
                        .as("labels %s and %s at %sx%s", one, other, size[0], size[1])
                        .isTrue();
            }
        }
    }

    @Test
    void rigsOfOneToSixStagesWithAndWithoutCapAndWaterAreDrawnAtAnySize() {
        for (int[] size : Counts.firstOf(ODD_SIZES[3], ODD_SIZES[0], SIZES[1])) {
            stage.resize(size[0], size[1]);
            for (int stages = 1; stages <= 6; stages++) {
                for (boolean cap : new boolean[] {true, false}) {
                    for (boolean water : new boolean[] {true, false}) {
                        Rig rig = DrawnRigs.of(stages, cap, water);
                        draw(rig, DrawnRigs.moment(rig, 0.8, 0.9));
                        Set<Part> parts =
                                DrawingStage.on(() -> drawing.picture().places().keySet());
                        assertThat(parts.stream().filter(p -> p.kind() == Part.Kind.JET))
                                .hasSize(stages);
                        assertThat(parts.contains(Part.of(Part.Kind.CAP))).isEqualTo(cap);
                        assertThat(parts.contains(Part.of(Part.Kind.WATER))).isEqualTo(water);
                        assertThat(parts.contains(Part.of(Part.Kind.TO_WATER))).isEqualTo(water);
                        assertClear(size);
                    }
                }
            }
        }
    }

    @Test
    void aPartPointedAtTellsItsFiguresAndItsMargin() {
        Rig rig = demo("mirror-club");
        List<Margin> margins = Stored.check(rig).margins();
        draw(rig, moments("mirror-club").get(2));
        stage.show(() -> drawing.setMargins(margins));
        stage.show(() -> spot(Part.of(Part.Kind.OIL)).requestFocus());
        PartReading oil = drawing.focusedPart();
        assertThat(oil.name()).isEqualTo("oil");
        assertThat(oil.lines()).anyMatch(l -> l.contains("degC")).anyMatch(l -> l.contains("of charge"));
        Margin bulk = margins.stream()
                .filter(m -> m.id() == MarginId.OIL_BULK)
                .findFirst()
                .orElseThrow();
        assertThat(oil.lines())
                .anyMatch(l ->
                        l.contains(bulk.title()) && l.contains(bulk.status().id()));
        assertThat(spot(Part.of(Part.Kind.OIL)).getAccessibleText()).isEqualTo(oil.spoken());
        FxRobot robot = new Keyboard();
        robot.moveTo(spot(new Part(Part.Kind.JET, 2)));
        assertThat(drawing.focusedPart().name()).contains("top");
        assertThat(drawing.focusedPart().lines()).anyMatch(l -> l.contains("of full flow"));
        robot.moveTo(stage.scene().getRoot(), new javafx.geometry.Point2D(-298, -298));
        assertThat(drawing.focusedPart()).isEqualTo(oil);
    }

    @Test
    void aClickOrEnterOpensAPartsCardBesideItAndEscClosesIt() {
        draw(demo("mirror-club"), moments("mirror-club").get(2));
        PartSpot jet = spot(new Part(Part.Kind.JET, 0));
        PartCard card = drawing.card();
        FxRobot robot = new FxRobot();
        robot.clickOn(jet);
        assertThat(card.isShowing()).isTrue();
        Bounds place = DrawingStage.on(() -> jet.localToScreen(jet.getBoundsInLocal()));
        assertThat(card.getX()).isBetween(place.getMaxX() - 20, place.getMaxX() + 20);
        assertThat(card.getY()).isLessThan(place.getCenterY());
        assertThat(card.getY() + card.getHeight()).isGreaterThan(place.getCenterY());
        assertThat(told(card)).anyMatch(words -> words.contains("of full flow"));
        robot.push(KeyCode.ESCAPE);
        assertThat(card.isShowing()).isFalse();
        assertThat(stage.scene().getFocusOwner()).isSameAs(jet);
        robot.push(KeyCode.ENTER);
        assertThat(card.isShowing()).isTrue();
        robot.push(KeyCode.UP);
        assertThat(card.isShowing()).as("it goes along with the focus").isTrue();
        assertThat(focused()).isNotEqualTo(jet.part());
        assertThat(told(card).get(0)).isEqualTo(Readings.name(PumpShape.of(demo("mirror-club")), focused()));
        robot.push(KeyCode.ESCAPE);
        assertThat(card.isShowing()).isFalse();
    }

    private static List<String> told(PartCard card) {
        return ((Pane) card.getContentNode())
                .getChildren().stream().map(node -> ((Label) node).getText()).toList();
    }

    @Test
    void tabAndArrowsWalkThroughTheParts() {
        Rig rig = demo("mirror-club");
        draw(rig, moments("mirror-club").get(2));
        Map<Part, Bounds> places = DrawingStage.on(() -> drawing.picture().places());
        stage.show(() -> spot(Part.of(Part.Kind.INLET)).requestFocus());
        FxRobot robot = new Keyboard();
        Set<Part> seen = new HashSet<>();
        for (int i = 0; i < places.size(); i++) {
            seen.add(focused());
            robot.push(KeyCode.TAB);
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(places.keySet());
        stage.show(() -> spot(Part.of(Part.Kind.INLET)).requestFocus());
        double y = places.get(focused()).getCenterY();
        int steps = 0;
        for (Part before = null; !focused().equals(before); steps++) {
            before = focused();
            robot.push(KeyCode.DOWN);
            assertThat(places.get(focused()).getCenterY()).isGreaterThanOrEqualTo(y);
            y = places.get(focused()).getCenterY();
        }
        assertThat(steps).isGreaterThan(5);
        robot.push(KeyCode.UP);
        assertThat(places.get(focused()).getCenterY()).isLessThan(y);
    }

    @Test
    void guessedPartsAreMarkedAndSaySo() {
        Rig rig = demo("mirror-club");
        MomentState rest = moments("mirror-club").get(2);
        draw(rig, rest);
        Part jet = new Part(Part.Kind.JET, 0);
        double plain = frameInk(jet);
        stage.show(() -> drawing.setGuesses(Set.of("stages[0].throatGap", "charge")));
        assertThat(frameInk(jet)).isGreaterThan(plain + 5);
        stage.show(() -> spot(jet).requestFocus());
        assertThat(drawing.focusedPart().guess()).isTrue();
        assertThat(drawing.focusedPart().lines()).anyMatch(l -> l.contains("guesses"));
        stage.show(() -> spot(new Part(Part.Kind.JET, 1)).requestFocus());
        assertThat(drawing.focusedPart().guess()).isFalse();
        stage.show(() -> spot(Part.of(Part.Kind.OIL)).requestFocus());
        assertThat(drawing.focusedPart().guess()).isTrue();
        stage.show(() -> drawing.setGuesses(Set.of()));
        assertThat(drawing.focusedPart().guess()).isFalse();
    }

    /** Dark along the lower edge of the frame that a guessed part has round it. */
    private double frameInk(Part part) {
        PixelReader pixels = stage.picture().getPixelReader();
        Bounds place = DrawingStage.on(() -> drawing.picture().places().get(part));
        double sum = 0;
        for (double x = place.getMinX(); x < place.getMaxX(); x++) {
            double least = 1;
            for (int dy = 1; dy <= 4; dy++) {
                least = Math.min(
                        least,
                        pixels.getColor((int) x, (int) (place.getMaxY() + dy)).getBrightness());
            }
            sum += 1 - least;
        }
        return sum;
    }

    private Part focused() {
        return ((PartSpot) stage.scene().getFocusOwner()).part();
    }

    private PartSpot spot(Part part) {
        return drawing.getChildrenUnmodifiable().stream()
                .filter(PartSpot.class::isInstance)
                .map(PartSpot.class::cast)
                .filter(spot -> spot.part().equals(part))
                .findFirst()
                .orElseThrow();
    }
}
