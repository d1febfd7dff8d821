package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.thermal.RunSimulator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Each limit of a rig once, with where it comes from, its reserve and the direction of a remedy: whether a value is that at rest
 * or the worst of a run, it is held against the same.
 */
final class MarginRules {
    /** Ratio of heat available to heat needed that is wanted. */
    static final double HEAT_MARGIN = 1.25;

    static final double LEAST_FILM_K = 5;
    static final double WATER_IN_GOOD_LOW_K = 289.15;
    static final double WATER_IN_GOOD_K = 300.15;
    static final double WATER_IN_NEVER_K = 305.15;

    /** Share of its full flow at which a jet counts as full. */
    static final double FULL_FLOW = 0.9;
    /** Cartridge temperature above which it may burst, K (50 degC, the usual warning on cartridges; common practice). */
    private static final double CARTRIDGE_K = 323.15;

    private static final double COMFORTABLE_FILM_K = 20;
    private static final double GLASS_PERMISSIBLE_PA = 7e6;
    private static final double GLASS_HIGHEST_PA = 15e6;
    private static final double LEAST_LIQUID = 0.5;
    /** Share of the charge at which every run ends because the boiler is as good as dry. */
    private static final double DRY = 0.05;

    private final Limits limits;
    private final WorkingFluid fluid;
    private final double roomK;

    MarginRules(Rig rig, WorkingFluid fluid) {
        this.fluid = fluid;
        limits = rig.limits();
        roomK = rig.room().temperatureK();
    }

    /** Highest inlet temperature, K, for a rig. */
    static double highestInletK(Limits limits) {
        return limits.waterInHighK().orElse(WATER_IN_NEVER_K);
    }

    private static String basis(OptionalDouble user, AnswerText usual) {
        return user.isPresent() ? AnswerText.BASIS_USER.say() : usual.say();
    }

    /** The weakest jet: it is full from nine tenths on, and stays so until it falls well below. */
    MarginMaker weakestJet(double fullFlowFraction, boolean allFull) {
        double shown =
                allFull ? Math.max(FULL_FLOW, fullFlowFraction) : Math.min(Math.nextDown(FULL_FLOW), fullFlowFraction);
        return MarginMaker.of(MarginId.JETS)
                .value(shown)
                .atLeast(FULL_FLOW)
                .tightBelow(1)
                .basis(AnswerText.BASIS_JETS.say())
                .cure(AnswerText.CURE_JETS);
    }

    /** The oil in bulk. Along a run, where no limit of the fluid is known, that at which no vapour-jet pump works any more. */
    MarginMaker oilBulk(double oilK, Optional<TabulatedFluid> ofRun) {
        OptionalDouble user = limits.oilBulkK();
        OptionalDouble limit = user.isPresent() ? user : fluid.bulkLimit();
        MarginMaker maker = MarginMaker.of(MarginId.OIL_BULK)
                .value(oilK)
                .from(roomK)
                .tightBelow(1.05)
                .cure(AnswerText.CURE_OIL_BULK);
        if (limit.isPresent()) {
            return maker.atMost(limit.getAsDouble())
                    .basis(
                            user.isPresent()
                                    ? AnswerText.BASIS_USER.say()
                                    : AnswerText.BASIS_OIL_BULK.say(fluid.title()));
        }
        return ofRun.isPresent()
                ? maker.atMost(RunSimulator.highestOilK(ofRun.get())).basis(AnswerText.BASIS_OIL_WILD.say())
                : maker.side(Side.AT_MOST).basis(AnswerText.MISSING_OIL_BULK.say(fluid.title()));
    }

    MarginMaker oilFilm(double innerFaceK) {
        MarginMaker film = MarginMaker.of(MarginId.OIL_FILM)
                .value(innerFaceK)
                .side(Side.AT_MOST)
                .from(roomK)
                .tightBelow(1.05)
                .cure(AnswerText.CURE_OIL_FILM);
        OptionalDouble user = limits.oilFilmK();
        OptionalDouble limit = user.isPresent() ? user : fluid.filmLimit();
        return limit.isPresent()
                ? film.atMost(limit.getAsDouble())
                        .basis(
                                user.isPresent()
                                        ? AnswerText.BASIS_USER.say()
                                        : AnswerText.BASIS_OIL_FILM.say(fluid.title()))
                : film.basis(AnswerText.MISSING_OIL_FILM.say(fluid.title(), Say.temperature(innerFaceK)));
    }

    /** Share of the charge left in the boiler. */
    MarginMaker liquid(double share) {
        return MarginMaker.of(MarginId.LIQUID)
                .value(share)
                .atLeast(Math.max(DRY, limits.leastLiquidFraction().orElse(LEAST_LIQUID)))
                .tightBelow(1.4)
                .basis(basis(limits.leastLiquidFraction(), AnswerText.BASIS_LIQUID))
                .cure(AnswerText.CURE_LIQUID);
    }

    /** The heater against a limit that the user set: at the temperature at which it holds itself it does just what it should. */
    Optional<MarginMaker> source(double bodyK) {
        return limits.sourceK().isEmpty()
                ? Optional.empty()
                : Optional.of(MarginMaker.of(MarginId.SOURCE)
                        .value(bodyK)
                        .atMost(limits.sourceK().getAsDouble())
                        .from(roomK)
                        .tightBelow(1.03)
                        .basis(AnswerText.BASIS_USER.say())
                        .cure(AnswerText.CURE_SOURCE));
    }

    MarginMaker cartridge(double kelvin) {
        return MarginMaker.of(MarginId.CARTRIDGE)
                .value(kelvin)
                .atMost(CARTRIDGE_K)
                .from(roomK)
                .tightBelow(1.2)
                .basis(AnswerText.BASIS_CARTRIDGE.say())
                .cure(AnswerText.CURE_CARTRIDGE);
    }

    MarginMaker boilerGlass(double stressPa) {
        return glass(MarginId.GLASS_BOILER, stressPa, AnswerText.CURE_GLASS_BOILER);
    }

    MarginMaker bodyGlass(double stressPa) {
        return glass(MarginId.GLASS_BODY, stressPa, AnswerText.CURE_GLASS_BODY);
    }

    private MarginMaker glass(MarginId id, double stress, AnswerText cure) {
        OptionalDouble user = limits.glassStressPa();
        return MarginMaker.of(id)
                .value(stress)
                .atMost(user.orElse(GLASS_HIGHEST_PA))
                .tightBelow(user.isPresent() ? 1.1 : GLASS_HIGHEST_PA / GLASS_PERMISSIBLE_PA)
                .basis(basis(user, AnswerText.BASIS_GLASS))
                .cure(cure);
    }

    /** Film on the walls of working jets: how much colder than its vapour. */
    MarginMaker film(double kelvins) {
        return MarginMaker.of(MarginId.FILM_MARGIN)
                .value(kelvins)
                .atLeast(LEAST_FILM_K)
                .tightBelow(COMFORTABLE_FILM_K / LEAST_FILM_K)
                .basis(AnswerText.BASIS_FILM_MARGIN.say())
                .cure(AnswerText.CURE_FILM_MARGIN);
    }

    MarginMaker cap(double capK) {
        return MarginMaker.of(MarginId.CAP)
                .value(capK)
                .atMost(limits.capK().orElse(TypicalValues.CAP_LIMIT_K))
                .from(roomK)
                .tightBelow(1.2)
                .basis(basis(limits.capK(), AnswerText.BASIS_CAP))
                .cure(AnswerText.CURE_CAP);
    }

    MarginMaker waterOut(double outK) {
        return MarginMaker.of(MarginId.WATER_OUT)
                .value(outK)
                .atMost(limits.waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K))
                .from(roomK)
                .tightBelow(1.2)
                .basis(basis(limits.waterOutK(), AnswerText.BASIS_WATER_OUT))
                .cure(AnswerText.CURE_WATER_OUT);
    }

    /** Water that enters: good up to 27 degC, too warm above 32; both from the room. */
    MarginMaker waterIn(double inletK) {
        double never = highestInletK(limits);
        double good = limits.waterInHighK().orElse(WATER_IN_GOOD_K);
        return MarginMaker.of(MarginId.WATER_IN)
                .value(inletK)
                .atMost(never)
                .from(roomK)
                .tightBelow(never > good && good > roomK ? (never - roomK) / (good - roomK) : 1.1)
                .basis(basis(limits.waterInHighK(), AnswerText.BASIS_WATER_IN))
                .cure(AnswerText.CURE_WATER_IN_WARM);
    }
}
