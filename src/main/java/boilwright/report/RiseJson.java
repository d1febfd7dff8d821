package boilwright.report;

import boilwright.files.ProgramVersion;
import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseCurve;
import boilwright.rise.RiseRecord;

/** The answer of a pressure-rise test for other programs. Rates are in Pa m3/s; what there is not is null. */
public final class RiseJson {
    private RiseJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(RiseAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("verdict", answer.verdict().id())
                .put("sentence", answer.sentence())
                .put("volume", answer.volumeM3());
        answer.leak().ifPresentOrElse(leak -> rate(json.object("leak"), "value", leak), () -> json.nothing("leak"));
        answer.surfaceGas()
                .ifPresentOrElse(gas -> gas(json.object("surfaceGas"), gas), () -> json.nothing("surfaceGas"));
        answer.initialRise()
                .ifPresentOrElse(
                        rate -> rate(json.object("initialRise"), "value", rate), () -> json.nothing("initialRise"));
        JsonTree criterion = json.object("criterion");
        criterion.put("name", "AICc").put("leastDifference", answer.leastDifference());
        for (RiseCurve curve : RiseCurve.values()) {
            criterion.put(curve.id(), answer.scores().get(curve));
        }
        json.put("curve", answer.line().curve().id());
        JsonTree.Rows rows = json.rows("fit");
        for (RiseRecord.Reading reading : answer.record().readings()) {
            rows.add()
                    .put("t", reading.timeS())
                    .put("p", reading.pressurePa())
                    .put("fitted", answer.line().pressureAt(reading.timeS()));
        }
        json.object("units")
                .put("volume", "m3")
                .put("rates", "Pa m3/s")
                .put("t", "s")
                .put("p", "Pa")
                .put("fitted", "Pa");
        json.put("notes", answer.notes()).put("programVersion", ProgramVersion.current());
        return json.text();
    }

    private static void gas(JsonTree json, RiseAnswer.SurfaceGas gas) {
        rate(json, "initialRate", gas.initialRate());
        json.put("timeConstantS", gas.timeConstantS()).put("law", gas.byPowerLaw() ? "power-law" : "balance");
    }

    private static void rate(JsonTree json, String key, RiseAnswer.Rate rate) {
        json.put(key, rate.value()).put("low", rate.low()).put("high", rate.high());
    }
}
