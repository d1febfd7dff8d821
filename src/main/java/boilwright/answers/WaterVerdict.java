package boilwright.answers;

import boilwright.answers.WaterAnswer.LeastFlow;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Optional;
import java.util.OptionalDouble;

/** The cooling in a few sentences. */
final class WaterVerdict {
    private final Rig rig;
    private final SteadyState steady;
    private final double peakW;
    private final double pumpW;
    private final OptionalDouble capacityW;
    private final OptionalDouble settlesAtK;

    WaterVerdict(
            Rig rig,
            SteadyState steady,
            double peakW,
            double pumpW,
            OptionalDouble capacityW,
            OptionalDouble settlesAtK) {
        this.rig = rig;
        this.steady = steady;
        this.peakW = peakW;
        this.pumpW = pumpW;
        this.capacityW = capacityW;
        this.settlesAtK = settlesAtK;
    }

    String text(Optional<LeastFlow> governing) {
        if (rig.cooling().supply() instanceof Supply.FinsAndFan) {
            return AnswerText.WATER_VERDICT_FAN.say(Say.power(steady.heatToAirW()));
        }
        if (steady.waterOutK().isEmpty()) {
            return AnswerText.WATER_VERDICT_NONE.say();
        }
        StringBuilder text = new StringBuilder(AnswerText.WATER_VERDICT_FLOW.say(
                flow(steady.flow().volumeFlowM3PerS()),
                Say.power(steady.heatToWaterW()),
                Say.temperature(rig.cooling().inletTemperatureK()),
                Say.temperature(steady.waterOutK().getAsDouble())));
        if (capacityW.isPresent()) {
            text.append(' ').append(chiller(capacityW.getAsDouble()));
        }
        governing.ifPresent(least -> text.append(' ')
                .append(
                        least.flowM3PerS().isPresent()
                                ? AnswerText.WATER_VERDICT_LEAST.say(
                                        flow(least.flowM3PerS().getAsDouble()),
                                        least.limit().title())
                                : AnswerText.WATER_VERDICT_NO_FLOW.say(
                                        least.limit().title())));
        return text.toString();
    }

    private String chiller(double capacity) {
        double duty = steady.heatToWaterW() + pumpW;
        if (capacity < duty) {
            String text = AnswerText.WATER_VERDICT_SHORT.say(
                    Say.power(capacity), Say.power(duty), Say.power(duty - capacity));
            return settlesAtK.isPresent()
                    ? text + " " + AnswerText.WATER_VERDICT_SETTLES.say(Say.temperature(settlesAtK.getAsDouble()))
                    : text;
        }
        double peak = peakW + pumpW;
        if (capacity < peak) {
            return AnswerText.WATER_VERDICT_PEAK.say(Say.power(capacity), Say.power(duty), Say.power(peak));
        }
        return capacity < WaterSizing.RESERVE * peak
                ? AnswerText.WATER_VERDICT_TIGHT.say(Say.power(capacity), Say.power(peak))
                : AnswerText.WATER_VERDICT_ENOUGH.say(Say.power(capacity), Say.power(peak));
    }

    private static String flow(double m3PerS) {
        return QuantityWriter.writeAuto(m3PerS, Dimension.VOLUME_FLOW);
    }
}
