package boilwright.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Instructions;
import boilwright.answers.Stored;
import boilwright.drill.Interlock.Standing;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Protection;
import boilwright.rig.Protection.Battery;
import boilwright.rig.Protection.Load;
import boilwright.rig.Protection.Trip;
import boilwright.rig.Protection.TripKind;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.sequence.PlanCases;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TestRigs;
import boilwright.thermal.TimeSeries;
import boilwright.vacuum.BackingSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What faults do, what acts by itself, and what the interlocks are worth. Rigs are invented. */
class DrillQuestionTest {
    private static final Rig CLUB = PlanCases.demo("mirror-club");
    private static final Rig LAB = PlanCases.demo("teaching-lab");

    private static DrillSet answer(Rig rig, Fault... faults) {
        return Stored.answer(
                new DrillQuestion(Stored.asked(rig), List.of(faults), OptionalDouble.empty(), DrillQuestion.LATE_S));
    }

    /** Played once however many tests look at it; those of the club all together, as its interlocks want them. */
    private static DrillAnswer play(Rig rig, Fault fault) {
        DrillSet set = rig == CLUB ? answer(CLUB, Fault.values()) : answer(rig, fault);
        return set.played().stream().filter(d -> d.fault() == fault).findFirst().orElseThrow();
    }

    private static double[] column(DrillRun run, SeriesQuantity quantity) {
        return run.run().series().column(quantity).values();
    }

    private static double at(DrillRun run, SeriesQuantity quantity, double timeS) {
        TimeSeries series = run.run().series();
        double[] time = series.column(SeriesQuantity.TIME).values();
        double[] value = series.column(quantity).values();
        for (int i = 1; i < time.length; i++) {
            if (time[i] >= timeS && time[i] > time[i - 1]) {
                return value[i - 1] + (value[i] - value[i - 1]) * (timeS - time[i - 1]) / (time[i] - time[i - 1]);
            }
        }
        return value[value.length - 1];
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }

    private static double passed(DrillRun run, DrillLimit limit) {
        return run.limits().stream()
                .filter(l -> l.limit() == limit)
                .findFirst()
                .map(LimitTime::orNever)
                .orElseThrow();
    }

    /** A glass pump over a flame that fills every jet: under the club's metal boiler none does. */
    private static Rig flame() {
        return TestRigs.fourStageGlass(
                new HeatSource.GasBurner(1600, Optional.of(new HeatSource.Cartridge(0.2, 0.15, 1.0, 0.02))));
    }

    @Test
    void withoutMainsElectricHeatEndsAndAFlameBurnsOn() {
        DrillAnswer electric = play(CLUB, Fault.MAINS);
        assertThat(electric.heatEnds()).isTrue();
        assertThat(at(electric.heatOn(), SeriesQuantity.SOURCE_INPUT, 1)).isZero();
        assertThat(electric.longestTripDelayS()).isEmpty();
        DrillAnswer flame = play(flame(), Fault.MAINS);
        assertThat(flame.heatEnds()).isFalse();
        assertThat(at(flame.heatOn(), SeriesQuantity.SOURCE_INPUT, 1)).isGreaterThan(1000);
        assertThat(flame.acts()).anyMatch(s -> s.contains("flame burns on"));
        assertThat(flame.cautions()).anyMatch(s -> s.contains("flame goes on burning"));
        assertThat(flame.first().get(0)).contains("gas");
        assertThat(passed(flame.heatOn(), DrillLimit.WATER_BOILS))
                .isLessThanOrEqualTo(passed(flame.cutAtOnce(), DrillLimit.WATER_BOILS) + 0.1);
    }

    /** By hand: with nothing taken away the pressure climbs by load over volume. */
    @Test
    void withoutTheBackingPumpTheForelineFillsWithTheGasThatArrives() {
        DrillRun on = play(CLUB, Fault.BACKING).heatOn();
        BackingSide side = BackingSide.of(CLUB);
        double climb = (side.restingLoad() + side.ownLoad()) / side.volumeM3();
        double start = column(on, SeriesQuantity.FORELINE)[0];
        assertThat(at(on, SeriesQuantity.FORELINE, 60) - start).isCloseTo(60 * climb, within(0.05 * 60 * climb));
        double hot = (DrillLimit.FORELINE_WITH_HOT_OIL_PA - start) / climb;
        assertThat(passed(on, DrillLimit.FORELINE)).isCloseTo(hot, within(0.05 * hot));
    }

    /**
     * Air at room temperature through a hole into vacuum: 20 L/s per cm2 of opening at the pressure before it, choked (the usual
     * figure of vacuum handbooks for air at 20 C; from memory).
     */
    @Test
    void airComesInAsFastAsAChokedHoleLetsIt() {
        DrillRun on = play(CLUB, Fault.AIR_INLET).heatOn();
        double areaCm2 = Math.PI / 4 * Math.pow(100 * FaultDrill.OPENING_M, 2);
        double flow = 20e-3 * areaCm2 * CLUB.room().pressurePa();
        double volume = BackingSide.of(CLUB).volumeM3();
        double start = column(on, SeriesQuantity.FORELINE)[0];
        double constant = volume * FaultDrill.FOLLOWED_PA / flow;
        double[] time = column(on, SeriesQuantity.TIME);
        double[] pressure = column(on, SeriesQuantity.FORELINE);
        int read = 0;
        for (int i = 0; i < time.length && pressure[i] < 800; i++) {
            double expected = FaultDrill.FOLLOWED_PA - (FaultDrill.FOLLOWED_PA - start) * Math.exp(-time[i] / constant);
            assertThat(pressure[i]).as("after %s s", time[i]).isCloseTo(expected, within(0.05 * expected));
            read++;
        }
        assertThat(read)
                .as("records before the backing pump takes a share worth counting")
                .isGreaterThan(2);
        assertThat(passed(on, DrillLimit.FORELINE)).isLessThan(0.1);
        assertThat(last(column(on, SeriesQuantity.FORELINE))).isLessThanOrEqualTo(FaultDrill.FOLLOWED_PA);
        assertThat(on.jetsGoneS()).isPresent();
    }

    /** By hand: what the water carries and the pump's own heat warm the tank. */
    @Test
    void withoutItsChillerTheTankWarmsByWhatTheWaterBrings() {
        DrillRun on = play(CLUB, Fault.CHILLER_TRIP).heatOn();
        Supply.Chiller chiller = (Supply.Chiller) CLUB.cooling().supply();
        double heat = at(on, SeriesQuantity.HEAT_TO_WATER, 30) + chiller.pump().heatW();
        double capacity = chiller.volumeM3() * 998 * 4184;
        double rise = at(on, SeriesQuantity.WATER_IN, 60) - at(on, SeriesQuantity.WATER_IN, 30);
        assertThat(rise).isCloseTo(30 * heat / capacity, within(0.05 * 30 * heat / capacity));
        assertThat(at(on, SeriesQuantity.CHILLER, 10)).isZero();
    }

    @Test
    void aHeaterThatSticksGivesAllItIsRatedFor() {
        DrillAnswer stuck = play(CLUB, Fault.HEATER_STUCK);
        double rated = CLUB.heatSource().ratedPowerW();
        double before = PlanCases.check(CLUB).steady().sourceInputW();
        assertThat(before).isLessThan(0.9 * rated);
        assertThat(at(stuck.heatOn(), SeriesQuantity.SOURCE_INPUT, 10)).isCloseTo(rated, within(1e-6 * rated));
        assertThat(last(column(stuck.heatOn(), SeriesQuantity.LIQUID_TEMPERATURE)))
                .isGreaterThan(column(stuck.heatOn(), SeriesQuantity.LIQUID_TEMPERATURE)[0] + 3);
    }

    @Test
    void withoutFuelTheJetsGoOutFromFullPower() {
        DrillAnswer empty = play(flame(), Fault.CARTRIDGE_EMPTY);
        assertThat(empty.heatEnds()).isTrue();
        assertThat(at(empty.heatOn(), SeriesQuantity.SOURCE_INPUT, 1)).isZero();
        assertThat(empty.heatOn().jetsGoneS()).isPresent();
        assertThat(empty.first()).anyMatch(s -> s.contains("burner's tap"));
    }

    @Test
    void withoutItsFanABodyWithFinsGetsHotter() {
        Rig rig = CLUB.withCooling(new boilwright.rig.Cooling(
                new Supply.FinsAndFan(293.15, 4, 0.004, 0.02, 0.0005, boilwright.rig.Material.ALUMINIUM), List.of()));
        DrillAnswer fan = play(rig, Fault.FAN);
        double[] wall =
                fan.heatOn().run().series().column(SeriesQuantity.STAGE_WALL, 1).values();
        assertThat(last(wall)).isGreaterThan(wall[0] + 10);
    }

    @Test
    void aBatteryPutsTheHarmOffAndTheOneAskedForIsJustEnough() {
        DrillAnswer bare = play(LAB, Fault.MAINS);
        double needed = bare.battery().orElseThrow();
        assertThat(needed).isGreaterThan(0);
        for (double share : new double[] {0.8, 1.01}) {
            Rig kept = LAB.withProtection(new Protection(
                    LAB.protection().trips(),
                    new Battery(Set.of(Load.WATER, Load.BACKING_PUMP, Load.FAN), share * needed)));
            assertThat(play(kept, Fault.MAINS).harms()).as("%s of it", share).isEqualTo(share < 1);
        }
    }

    @Test
    void aTripWithinTheLongestDelayKeepsWhatACutCanKeepAndALaterOneDoesNot() {
        DrillAnswer water = play(CLUB, Fault.WATER);
        double longest = water.longestTripDelayS().orElseThrow();
        Trip own = CLUB.protection().trips().stream()
                .filter(t -> t.kind() == TripKind.WATER_FLOW)
                .findFirst()
                .orElseThrow();
        for (double delay : new double[] {longest - 2, longest + 4}) {
            List<Trip> trips = List.of(new Trip(TripKind.WATER_FLOW, own.setPoint(), delay));
            DrillAnswer again = play(
                    CLUB.withProtection(new Protection(trips, CLUB.protection().battery())), Fault.WATER);
            assertThat(again.byItself().orElseThrow().heatCutAfterS().orElseThrow())
                    .isCloseTo(delay, within(1e-9));
            boolean keepable = again.asItIs().limits().stream()
                    .filter(l -> l.limit().harms() && !again.notKept().contains(l.limit()))
                    .noneMatch(l -> l.passedS().isPresent());
            assertThat(keepable).as("after %s s", delay).isEqualTo(delay < longest);
        }
    }

    /** With the set points and delays it was told, every fault that the interlocks catch is caught. */
    @Test
    void theInterlocksThatAreAskedForCatchWhatTheySayTheyCatch() {
        for (Rig rig : Counts.firstOf(CLUB, LAB)) {
            DrillSet first = answer(rig, Fault.values());
            List<Trip> trips = new ArrayList<>();
            for (Interlock lock : first.interlocks()) {
                if (lock.setPoint().isPresent() && lock.longestDelayS().isPresent()) {
                    trips.add(new Trip(
                            lock.kind(),
                            lock.setPoint().getAsDouble(),
                            lock.longestDelayS().getAsDouble()));
                }
            }
            Rig mended =
                    rig.withProtection(new Protection(trips, rig.protection().battery()));
            DrillSet again = answer(mended, Fault.values());
            for (Interlock lock : again.interlocks()) {
                assertThat(lock.standing().isWanting())
                        .as(rig.name() + " " + lock.sentence())
                        .isFalse();
            }
            for (DrillAnswer drill : again.played()) {
                if (drill.longestTripDelayS().isPresent()) {
                    assertThat(drill.byItself()).as(drill.fault().id()).isPresent();
                }
            }
        }
    }

    @Test
    void tripsThatAreSetWrongAreNamed() {
        CheckAnswer check = PlanCases.check(CLUB);
        double flow = check.steady().flow().volumeFlowM3PerS();
        assertThat(standing(CLUB, new Trip(TripKind.WATER_FLOW, 1.1 * flow, 0))).isEqualTo(Standing.TOO_EARLY);
        assertThat(standing(CLUB, new Trip(TripKind.WATER_FLOW, 0.5 * flow, 1200)))
                .isEqualTo(Standing.TOO_LATE);
        assertThat(standing(CLUB, new Trip(TripKind.WATER_FLOW, 0.5 * flow, 5))).isEqualTo(Standing.THERE);
    }

    private static Standing standing(Rig rig, Trip trip) {
        Rig changed = rig.withProtection(
                new Protection(List.of(trip), rig.protection().battery()));
        return answer(changed, Fault.WATER).interlocks().stream()
                .filter(i -> i.kind() == trip.kind())
                .findFirst()
                .orElseThrow()
                .standing();
    }

    @Test
    void aForelineThatIsGivenIsNotFollowedAndThatIsSaid() {
        Rig given = CLUB.withForeline(new Foreline.GivenPressure(5));
        DrillSet set = answer(given, Fault.MAINS, Fault.BACKING, Fault.AIR_INLET);
        assertThat(set.notPlayed()).extracting(DrillSet.NotPlayed::fault).contains(Fault.BACKING, Fault.AIR_INLET);
        DrillAnswer mains = set.played().stream()
                .filter(d -> d.fault() == Fault.MAINS)
                .findFirst()
                .orElseThrow();
        assertThat(mains.notes()).anyMatch(n -> n.contains("not followed"));
    }

    @Test
    void nobodyIsToldToShutAValveThatIsNotThere() {
        String shut =
                new Instructions(CLUB, Stored.asked(CLUB).fluid()).shutValve().orElseThrow();
        assertThat(play(CLUB, Fault.WATER).first()).contains(shut);
        assertThat(play(LAB, Fault.WATER).first()).doesNotContain(shut).hasSizeGreaterThan(1);
    }
}
