package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import java.util.Locale;

/** The kinds of file that a chart is written to. */
public enum ChartFormat {
    PNG,
    SVG,
    CSV;

    /** The ending of its files. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What people call it. */
    public String title() {
        return WindowText.say("chart.format." + ending());
    }
}
