package boilwright.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.answers.CheckAnswer;
import boilwright.answers.HeatLimiter;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.Stored;
import boilwright.choice.SourceRow.State;
import boilwright.errors.CancelledException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CompareJson;
import boilwright.report.HeatSpread;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.OfferedSource;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.SourceLibrary;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sources side by side: each loser by its limit, the recommended one held against the whole check. */
class CompareQuestionTest {
    private static final boolean WHOLE_LIBRARY = Counts.of(0, 1) == 1;
    /** Those of the library whose rows are looked at one by one, and the strongest of each kind. */
    private static final Set<String> SOME = Set.of(
            "clamped-2200",
            "burner-1000",
            "burner-1500",
            "burner-2200",
            "burner-3500",
            "hot-plate-1000-domed",
            "hot-plate-2000-domed",
            "hot-plate-1000-flat",
            "hot-plate-1000-metal",
            "hot-plate-2000-metal",
            "induction-2000-bare",
            "induction-2000-plate-metal");

    private static CompareQuestion question(Rig rig, List<OfferedSource> sources, int threads) {
        return new CompareQuestion(Stored.asked(rig), sources, CompareQuestion.RoomAir.USUAL, threads);
    }

    private static CompareAnswer compare(Rig rig, List<OfferedSource> sources, int threads) {
        return Stored.answer(question(rig, sources, threads));
    }

    private static CompareAnswer demo(String name) {
        List<OfferedSource> sources = SourceLibrary.builtIn().sources().stream()
                .filter(source -> WHOLE_LIBRARY || SOME.contains(source.id()))
                .toList();
        return compare(ChoiceCases.demo(name), sources, 2);
    }

    static List<String> demos() {
        return List.of("neon-workshop", "mirror-club", "teaching-lab").subList(0, Counts.of(2, 3));
    }

    private static OfferedSource offered(String id, HeatSource source) {
        return new OfferedSource(id, id, source, "", false, "", List.of());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theRecommendedSourceHoldsInTheCheckOfThatRig(String demo) {
        CompareAnswer answer = demo(demo);
        CheckAnswer check = ChoiceCases.check(answer.recommendedRig().orElseThrow());
        assertThat(check.steady().stages()).allMatch(StageState::full);
        assertThat(ChoiceCases.heatRatio(check)).isGreaterThan(1.09);
        assertThat(SourceTrial.broken(check.margins())).isEmpty();
        SourceRow row = answer.row(answer.recommendedId().orElseThrow()).orElseThrow();
        assertThat(ChoiceCases.heatRatio(ChoiceCases.check(row.rig()))).isCloseTo(row.ratio(), within(1e-9));
        assertThat(row.ratio()).isGreaterThanOrEqualTo(answer.wanted());
    }

    /** Whoever is not enough is told the one thing that stops it. */
    @ParameterizedTest
    @MethodSource("demos")
    void everyLoserNamesWhatLimitsIt(String demo) {
        List<SourceRow> losers = demo(demo).rows().stream()
                .filter(r -> r.state() == State.SHORT || r.state() == State.TIGHT)
                .toList();
        assertThat(losers).isNotEmpty().allSatisfy(row -> {
            HeatLimiter limiter = row.limiter().orElseThrow();
            assertThat(row.verdict()).contains(limiter.reason());
            assertThat(limiter.cure()).isNotBlank();
            assertThat(row.ratio()).isLessThan(1.25);
        });
    }

    @Test
    void theHotPlateOfTheNeonWorkshopFailsByItsContact() {
        SourceRow present = demo("neon-workshop").row("present").orElseThrow();
        assertThat(present.state()).isEqualTo(State.SHORT);
        assertThat(present.limiter().orElseThrow().kind()).isEqualTo(HeatLimiter.Kind.CONTACT);
        // and no plate of the library does better under that dome
        assertThat(demo("neon-workshop").rows())
                .filteredOn(r -> r.id().endsWith("-domed"))
                .hasSize(Counts.of(2, 5))
                .allMatch(r -> r.state() == State.SHORT);
        SourceRow bare = demo("neon-workshop").row("induction-2000-bare").orElseThrow();
        assertThat(bare.check().steady().heatDeliveredW()).isCloseTo(0, within(1e-9));
        assertThat(bare.limiter().orElseThrow().kind()).isEqualTo(HeatLimiter.Kind.NOT_FERROUS);
        assertThat(bare.verdict()).contains("nothing ferrous");
    }

    /** One source for each of the limits that the model knows. */
    @Test
    void eachLimitIsToldApart() {
        Rig glass = TestRigs.fourStageGlass(TestRigs.flame(1600));
        CompareAnswer answer = compare(
                glass,
                List.of(
                        offered("small-flame", TestRigs.flame(300)),
                        offered("contact", TestRigs.poorPlate()),
                        offered("cool", plate(1500, 250, 490)),
                        offered("weak", plate(200, 250, 900)),
                        offered("wide-flame", TestRigs.flame(700))),
                2);
        assertThat(kind(answer, "small-flame")).isEqualTo(HeatLimiter.Kind.RATING);
        assertThat(kind(answer, "contact")).isEqualTo(HeatLimiter.Kind.CONTACT);
        assertThat(kind(answer, "cool")).isEqualTo(HeatLimiter.Kind.SOURCE_TEMPERATURE);
        assertThat(kind(answer, "weak")).isEqualTo(HeatLimiter.Kind.RATING);
        Rig thickWall = glass.withBoiler(new boilwright.rig.Boiler(
                boilwright.rig.Material.BOROSILICATE,
                0.13,
                0.007,
                0.022,
                0.022,
                0.02,
                0,
                0.05,
                0.9,
                OptionalDouble.empty()));
        assertThat(kind(compare(thickWall, List.of(offered("wall", plate(3000, 1500, 660))), 1), "wall"))
                .isEqualTo(HeatLimiter.Kind.WALL_CONDUCTION);
        assertThat(kind(demo("mirror-club"), "burner-3500")).isEqualTo(HeatLimiter.Kind.FLAME_WIDER_THAN_BASE);
    }

    private static HeatLimiter.Kind kind(CompareAnswer answer, String id) {
        return answer.row(id).orElseThrow().limiter().orElseThrow().kind();
    }

    private static HeatSource plate(double watts, double conductance, double limitK) {
        return new HeatSource.ContactPlate(
                watts,
                new ContactBody(
                        HeatSource.Contact.DOMED_GLASS,
                        0.022,
                        OptionalDouble.of(conductance),
                        1000,
                        limitK,
                        HeatSource.Thermostat.PROPORTIONAL,
                        0.03,
                        0.8,
                        0,
                        0.05));
    }

    @Test
    void noSourceTouchesMoreThanTheBase() {
        for (String demo : List.of("neon-workshop", "mirror-club")) {
            double base = ChoiceCases.demo(demo).boiler().heatedAreaM2();
            assertThat(demo(demo).rows())
                    .filteredOn(r -> r.rig().heatSource().touches())
                    .hasSizeGreaterThan(3)
                    .allSatisfy(r -> assertThat(
                                    r.rig().heatSource().body().orElseThrow().areaM2())
                            .isLessThanOrEqualTo(base));
        }
    }

    @Test
    void whatDoesNotGoWithTheBoilerIsNotWorkedOut() {
        assertThat(demo("neon-workshop").unfit())
                .anyMatch(u -> u.id().equals("clamped-2200") && u.reason().contains("cracks"));
        assertThat(demo("mirror-club").unfit()).anyMatch(u -> u.id().equals("hot-plate-1000-domed"));
        assertThat(demo("mirror-club").unfit()).noneMatch(u -> u.id().equals("clamped-2200"));
        // a flat plate needs a flat bottom, and the flask of the workshop stands on a dome
        assertThat(demo("neon-workshop")
                        .row("hot-plate-1000-flat")
                        .orElseThrow()
                        .condition())
                .contains("flat bottom");
    }

    @Test
    void theAnswerDoesNotDependOnThreads() {
        Rig rig = ChoiceCases.demo("mirror-club");
        List<OfferedSource> all = SourceLibrary.builtIn().sources();
        List<OfferedSource> some = all.subList(0, Counts.of(3, all.size()));
        assertThat(CompareJson.write(anew(rig, some, 2), HeatSpread.NONE))
                .isEqualTo(CompareJson.write(anew(rig, some, 1), HeatSpread.NONE));
    }

    private static CompareAnswer anew(Rig rig, List<OfferedSource> sources, int threads) {
        return Model.COMPUTING.answer(question(rig, sources, threads), new CancelToken(), ProgressSink.NONE);
    }

    /** Energy of the warm-up and of what is left of four hours, the latter from the power that the check finds at that setting. */
    @Test
    void aSessionIsWarmUpAndPumping() {
        SourceRow row = demo("mirror-club").row("clamped-2200").orElseThrow();
        double warmUp = row.session().orElseThrow().warmUpJ();
        // a heater that does not come near its limit takes all of its rating
        assertThat(warmUp).isCloseTo(row.fullAfterS().orElseThrow() * 2200, within(0.001 * warmUp));
        Rig held = row.rig()
                .withSchedule(SourceTrial.from(0, row.held().orElseThrow().share()));
        CheckAnswer check = ChoiceCases.check(held);
        assertThat(ChoiceCases.heatRatio(check)).isCloseTo(1.1, within(0.005));
        double pumpingS = TypicalValues.SESSION_S - row.fullAfterS().orElseThrow();
        assertThat(row.session().orElseThrow().pumpingJ())
                .isCloseTo(
                        pumpingS * check.steady().sourceInputW(),
                        within(0.01 * pumpingS * check.steady().sourceInputW()));
    }

    /** Over many switchings of a thermostat the energy of the time line is that of the proportional one at rest. */
    @Test
    void energyUnderAThermostatIsCountedRight() {
        CheckAnswer check =
                demo("neon-workshop").row("hot-plate-1000-domed").orElseThrow().check();
        double[] times = check.warmup().series().column(SeriesQuantity.TIME).values();
        double end = times[times.length - 1];
        double from = java.util.Arrays.stream(times)
                .filter(t -> t > end - 2400)
                .findFirst()
                .orElseThrow();
        double mean = SourceTrial.inputJ(check.warmup(), from, end) / (end - from);
        assertThat(mean).isCloseTo(check.steady().sourceInputW(), within(0.05 * mean));
    }

    @Test
    void jetsMarginsAndTimesAreThoseOfTheCheck() {
        SourceRow row = demo("neon-workshop").row("burner-1500").orElseThrow();
        CheckAnswer check = ChoiceCases.check(row.rig());
        assertThat(row.jetsFull()).isEqualTo(3);
        assertThat(row.oilRatio().orElseThrow())
                .isEqualTo(Math.min(
                        ChoiceCases.margin(check, MarginId.OIL_BULK).ratio().orElseThrow(),
                        ChoiceCases.margin(check, MarginId.OIL_FILM).ratio().orElseThrow()));
        assertThat(row.glassRatio()).isPresent();
        assertThat(ChoiceCases.margin(check, MarginId.HEAT).status()).isEqualTo(Margin.Status.HOLDS);
    }

    /** 2.2 kW burn 160 g of butane an hour (a usual rating, from memory; the gross heating value gives the same). */
    @Test
    void fuelFollowsFromTheGrossHeatingValue() {
        SourceRow row = demo("neon-workshop").row("burner-2200").orElseThrow();
        GasUse gas = row.gas().orElseThrow();
        assertThat(gas.fuelKg().orElseThrow())
                .isCloseTo(row.session().orElseThrow().totalJ() * 0.160 / (2200 * 3600), within(0.001));
        assertThat(gas.cartridges()).isEqualTo(2);
        assertThat(gas.leastFuelW().orElseThrow()).isBetween(400.0, 1000.0);
        assertThat(gas.coldestK()).isEmpty();
    }

    /** A small cartridge in a cold room chills until the flame is below what full jets need; in a warm one it does not. */
    @Test
    void aCartridgeInTheColdChillsTooFar() {
        Rig rig = ChoiceCases.demo("neon-workshop");
        HeatSource burner = new HeatSource.GasBurner(2200, Optional.of(new HeatSource.Cartridge(0.23, 0.1, 0.1, 0)));
        GasUse warm = compare(rig, List.of(offered("gas", burner)), 1)
                .row("gas")
                .orElseThrow()
                .gas()
                .orElseThrow();
        Rig cold = RigEdit.of("room.temperature", 278.15).applied(rig);
        GasUse chilled = compare(cold, List.of(offered("gas", burner)), 1)
                .row("gas")
                .orElseThrow()
                .gas()
                .orElseThrow();
        assertThat(chilled.chillsAfterS()).isPresent();
        assertThat(chilled.chilledK().orElseThrow()).isBetween(272.0, 278.15);
        assertThat(warm.chillsAfterS().orElse(Double.POSITIVE_INFINITY))
                .isGreaterThan(chilled.chillsAfterS().getAsDouble());
        assertThat(warm.coldestK().orElseThrow()).isLessThan(293.15);
    }

    @Test
    void itCanBeStopped() {
        CancelToken stop = new CancelToken();
        stop.cancel();
        Rig rig = ChoiceCases.demo("mirror-club");
        CompareQuestion question = question(rig, SourceLibrary.builtIn().sources(), 2);
        assertThatThrownBy(() -> Model.COMPUTING.answer(question, stop, ProgressSink.NONE))
                .isInstanceOf(CancelledException.class);
    }
}
