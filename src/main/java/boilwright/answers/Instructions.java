package boilwright.answers;

import boilwright.fluid.WorkingFluid;
import boilwright.rig.GasSide;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person is told to do in one situation, said once for a rig: plan, sheet, drills, emergency box, companion and cautions
 * all take it from here, so that none says otherwise.
 *
 * @param rig the rig
 * @param fluid its fluid
 */
public record Instructions(Rig rig, WorkingFluid fluid) {
    /** Greatest sudden difference of temperature for borosilicate glass, K: tube makers' figure. */
    public static final double SHOCK_K = 120;

    /** Heat first: off, or its gas shut. */
    public String heatOff() {
        return (rig.heatSource().isFlame() ? AnswerText.DO_GAS_OFF : AnswerText.DO_HEAT_OFF).say();
    }

    /** The high-vacuum valve; empty where there is none to shut. */
    public Optional<String> shutValve() {
        return hasValve(rig) ? Optional.of(AnswerText.DO_SHUT_VALVE.say()) : Optional.empty();
    }

    /**
     * Whether something can shut the chamber off from the pump: a valve in the line, or that by which it is roughed past the
     * pump; taken so when no chamber is described.
     */
    public static boolean hasValve(Rig rig) {
        Optional<GasSide> side = rig.vacuum();
        return side.isEmpty()
                || !side.get().roughing().isEmpty()
                || side.get().line().stream().anyMatch(piece -> piece.kind() == PieceKind.VALVE);
    }

    /**
     * Water that came to a stop. Two dangers set the temperature at which it may be turned on again, that glass cracks (120 K
     * above the water) and that it flashes to steam in a hot coil; the usual 60 degC of the body keeps well clear of both and is
     * the safer one.
     */
    public String waterBack() {
        return AnswerText.DO_WATER_BACK.say(Say.temperature(waterBackK()));
    }

    /** Temperature of the body, K, below which water may be turned on again after a loss. */
    public double waterBackK() {
        return Math.min(TypicalValues.LEAVE_OIL_K, rig.cooling().inletTemperatureK() + SHOCK_K);
    }

    /** Water that still runs. */
    public String keepWater() {
        return AnswerText.DO_KEEP_WATER.say();
    }

    /** The way between pump and backing pump when the latter stands. */
    public String shutBacking() {
        return AnswerText.DO_SHUT_BACKING.say();
    }

    /** Oil temperature below which air may be let in, K: the fluid's limit or, where none is known, room temperature. */
    public double airK() {
        return fluid.airAdmissionLimit().orElse(rig.room().temperatureK() + TypicalValues.AT_ROOM_K);
    }

    /**
     * No air onto hot oil.
     *
     * @param coldAfterS when the oil is cold enough, s after the heat is off; empty when that is not known
     */
    public String noAir(OptionalDouble coldAfterS) {
        String limit = Say.temperature(airK());
        return coldAfterS.isPresent()
                ? AnswerText.DO_NO_AIR_UNTIL.say(limit, Say.time(coldAfterS.getAsDouble()))
                : AnswerText.DO_NO_AIR.say(limit);
    }
}
