package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import boilwright.fluid.PropertyLine;
import boilwright.units.PhysicalConstants;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One property of a fluid at one temperature, in words.
 *
 * @param title which property
 * @param value the figure with its unit, or that there is none and why
 * @param range where the source vouches for it, and whether the temperature lies beyond; empty when there is nothing to say
 * @param uncertainty how far off it may be; empty when there is no figure
 * @param place where in its source it stands, after the source's number; empty when there is no figure
 * @param source the whole citation; empty when there is no figure
 */
public record DetailLine(String title, String value, String range, String uncertainty, String place, String source) {

    /** Every line that is known of a fluid, and then its sources by the numbers that the lines give them. */
    public static List<DetailLine> all(List<PropertyLine> lines, double temperatureK) {
        List<String> sources = lines.stream()
                .map(PropertyLine::citation)
                .filter(source -> !source.isEmpty())
                .distinct()
                .toList();
        List<DetailLine> all = new ArrayList<>();
        lines.forEach(line -> all.add(of(line, temperatureK, 1 + sources.indexOf(line.citation()))));
        for (int i = 0; i < sources.size(); i++) {
            String title = WindowText.say("fluids.detail.source-number", Integer.toString(i + 1));
            all.add(new DetailLine(title, sources.get(i), "", "", "", ""));
        }
        return List.copyOf(all);
    }

    private static DetailLine of(PropertyLine line, double temperatureK, int source) {
        PropertyLine.Words entry = line.entry();
        if (!line.isAvailable()) {
            return new DetailLine(entry.title(), entry.valueText(), "", "", "", "");
        }
        OptionalDouble value = line.valueAt(temperatureK);
        String uncertainty = line.isYesOrNo()
                ? ""
                : entry.uncertainty().isEmpty() ? WindowText.say("fluids.detail.not-stated") : entry.uncertainty();
        String key = entry.fromMemory() ? "fluids.detail.place-from-memory" : "fluids.detail.place";
        return new DetailLine(
                entry.title(),
                value(line, value),
                range(line, value, temperatureK),
                uncertainty,
                WindowText.say(key, Integer.toString(source), line.place()),
                line.citation());
    }

    private static String value(PropertyLine line, OptionalDouble value) {
        if (line.isYesOrNo()) {
            return line.entry().valueText();
        }
        return value.isPresent()
                ? QuantityWriter.writeAuto(value.getAsDouble(), line.dimension())
                : WindowText.say("fluids.detail.not-here");
    }

    private static String range(PropertyLine line, OptionalDouble value, double temperatureK) {
        List<String> words = new ArrayList<>();
        line.usual()
                .ifPresent(usual -> words.add(WindowText.say(
                        "fluids.detail.usual",
                        QuantityWriter.writeAuto(usual.low(), line.dimension()),
                        QuantityWriter.writeAuto(usual.high(), line.dimension()))));
        line.vouchedK()
                .ifPresent(range ->
                        words.add(WindowText.say("fluids.detail.range", celsius(range.low()), celsius(range.high()))));
        boolean beyond =
                line.vouchedK().map(range -> !range.contains(temperatureK)).orElse(false);
        if (beyond && value.isPresent()) {
            words.add(WindowText.say("fluids.detail.extrapolated"));
        }
        return String.join(", ", words);
    }

    private static String celsius(double kelvin) {
        return Long.toString(Math.round(kelvin - PhysicalConstants.ZERO_CELSIUS_K));
    }
}
