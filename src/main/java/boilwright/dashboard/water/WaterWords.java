package boilwright.dashboard.water;

import boilwright.answers.Margin;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import boilwright.water.CurvePair;
import java.util.OptionalDouble;

/** Figures of the water in the words and units of this page. */
final class WaterWords {
    private WaterWords() {}

    static String temperature(double kelvin) {
        return QuantityWriter.write(
                kelvin, UnitTable.find("degC", Dimension.TEMPERATURE).orElseThrow());
    }

    static String power(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }

    static String pressure(double pascals) {
        return QuantityWriter.writeAuto(pascals, Dimension.PRESSURE);
    }

    /** A flow, m3/s, in litres a minute. */
    static String flow(double m3PerS) {
        return QuantityWriter.write(
                m3PerS, UnitTable.find("L/min", Dimension.VOLUME_FLOW).orElseThrow());
    }

    /** A temperature in degrees Celsius without its unit. */
    static String degrees(double kelvin) {
        String text = temperature(kelvin);
        return text.substring(0, text.indexOf(' '));
    }

    static String kind(SupplyKind kind) {
        return WindowText.say("water.supply." + kind.id());
    }

    /** What a supply is worth knowing for, under its name. */
    static String about(Supply supply, CurvePair curves) {
        return switch (supply.kind()) {
            case TANK -> about(supply.tank().orElseThrow());
            case TAP ->
                WindowText.say(
                        "water.supply.head", pressure(supply.tap().orElseThrow().staticPressurePa()));
            case GIVEN_FLOW, CHILLER, FINS_AND_FAN -> {
                double[] head = curves.supplyHeadPa();
                yield head.length > 0 && Double.isFinite(head[0])
                        ? WindowText.say("water.supply.head", pressure(head[0]))
                        : "";
            }
        };
    }

    private static String about(Supply.Tank tank) {
        String volume = QuantityWriter.writeAuto(tank.volumeM3(), Dimension.VOLUME);
        return tank.iceKg() > 0
                ? WindowText.say("water.supply.iced", volume, QuantityWriter.writeAuto(tank.iceKg(), Dimension.MASS))
                : volume;
    }

    /** A margin in a few words: title, state and ratio. */
    static String margin(Margin margin) {
        return WindowText.say(
                "water.margin",
                margin.title(),
                margin.status().mark() + " " + margin.status().id(),
                ratio(margin.ratio()));
    }

    private static String ratio(OptionalDouble ratio) {
        return ratio.isEmpty() || ratio.getAsDouble() > 99
                ? WindowText.say("water.margin.far")
                : String.format(java.util.Locale.ROOT, "%.2f", ratio.getAsDouble());
    }
}
