package boilwright.dashboard.run;

import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanStep;
import boilwright.sequence.SwitchSpans;
import boilwright.sequence.SwitchSpans.Span;
import boilwright.sequence.SwitchSpans.Switch;
import boilwright.sequence.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/**
 * A plan along its clocks, side by side: the steps as numbers that can be chosen, below them what is on from
 * when to when. Steps at one time stand one above the other.
 */
final class PlanStrip extends Region {
    private static final double[] TICKS_S = {60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400, 28800, 86400};
    private static final int MOST_TICKS = 7;
    private static final double LABEL_EMS = 5.5;
    private static final double GAP_EMS = 2;
    private static final double CHIP_EMS = 2.1;
    private static final double LANE_EMS = 2;
    private static final double ROW_EMS = 1.15;
    private static final double AFTER_LAST = 1.05;
    private static final double LEAST_S = 60;

    private record Chip(ToggleButton button, PlanStep step, int lane) {}

    private record Bar(Region region, Span span) {}

    private record Tick(Label label, Clock clock, double atS) {}

    private final Label lettering = new Label("m");
    private final ToggleGroup group = new ToggleGroup();
    private final List<Chip> chips = new ArrayList<>();
    private final List<Bar> bars = new ArrayList<>();
    private final List<Tick> ticks = new ArrayList<>();
    private final List<Label> rowTitles = new ArrayList<>();
    private final List<Label> clockTitles = new ArrayList<>();
    private List<Clock> clocks = List.of();
    private List<Switch> rows = List.of();
    private List<PlanStep> steps = List.of();
    private IntConsumer chosen = step -> {};
    private double laidOutFor = -1;

    PlanStrip() {
        setId("run-strip");
        getStyleClass().add("plan-strip");
        lettering.setVisible(false);
        lettering.setManaged(false);
        getChildren().add(lettering);
    }

    /** Whom to tell when a step is chosen, by its index. */
    void onChosen(IntConsumer listener) {
        chosen = listener;
    }

    /** Marks a step as the chosen one. */
    void select(int step) {
        group.selectToggle(step >= 0 && step < chips.size() ? chips.get(step).button() : null);
    }

    void show(Plan plan) {
        getChildren().setAll(lettering);
        chips.clear();
        bars.clear();
        ticks.clear();
        rowTitles.clear();
        clockTitles.clear();
        laidOutFor = -1;
        steps = plan.steps();
        clocks = SwitchSpans.clocks(steps);
        rows = SwitchSpans.switches(steps);
        for (Switch row : rows) {
            rowTitles.add(text(row.title(), "plan-strip-row"));
        }
        for (Clock clock : clocks) {
            clockTitles.add(text(title(plan.variant(), clock), "plan-strip-clock"));
            ticks(clock);
        }
        for (Span span : SwitchSpans.of(plan.variant(), steps)) {
            Region bar = new Region();
            bar.getStyleClass()
                    .addAll("plan-strip-bar", "plan-strip-" + span.what().name().toLowerCase(Locale.ROOT));
            bars.add(new Bar(bar, span));
            getChildren().add(bar);
        }
        for (int i = 0; i < steps.size(); i++) {
            ToggleButton button = chip(i);
            chips.add(new Chip(button, steps.get(i), 0));
            getChildren().add(button);
        }
        requestLayout();
    }

    private static String title(Variant variant, Clock clock) {
        String key = clock == Clock.FROM_COLD ? "start" : variant == Variant.STANDBY ? "pause" : "stop";
        return WindowText.say("run.clock." + key);
    }

    private Label text(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        getChildren().add(label);
        return label;
    }

    private ToggleButton chip(int i) {
        PlanStep step = steps.get(i);
        ToggleButton button = new ToggleButton(Integer.toString(i + 1));
        button.setId("run-chip-" + (i + 1));
        button.getStyleClass().setAll("toggle-button", "plan-chip");
        button.setToggleGroup(group);
        String words = WindowText.say(
                "run.step.spoken",
                Integer.toString(i + 1),
                step.moment().inWords(),
                step.words().what());
        button.setAccessibleText(words);
        Tooltip tip = new Tooltip(words);
        tip.setWrapText(true);
        tip.setMaxWidth(420);
        button.setTooltip(tip);
        button.setOnAction(event -> {
            button.setSelected(true);
            chosen.accept(i);
        });
        return button;
    }

    private void ticks(Clock clock) {
        double end = end(clock);
        double every = TICKS_S[TICKS_S.length - 1];
        for (double s : TICKS_S) {
            if (end / s <= MOST_TICKS) {
                every = s;
                break;
            }
        }
        for (double t = 0; t <= end; t += every) {
            long minutes = Math.round(t / 60);
            Label label = text(String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60), "plan-strip-tick");
            ticks.add(new Tick(label, clock, t));
        }
    }

    private double end(Clock clock) {
        double last = LEAST_S;
        for (PlanStep step : steps) {
            if (step.moment().clock() == clock) {
                last = Math.max(last, step.moment().atS());
            }
        }
        return last * AFTER_LAST;
    }

    private double em() {
        return lettering.getFont().getSize();
    }

    private double x(Clock clock, double seconds, double width) {
        int index = clocks.indexOf(clock);
        double panel = (width - LABEL_EMS * em() - GAP_EMS * em() * (clocks.size() - 1)) / Math.max(1, clocks.size());
        double left = LABEL_EMS * em() + index * (panel + GAP_EMS * em());
        return left + Math.min(seconds, end(clock)) / end(clock) * panel;
    }

    /** Puts each number into the lowest lane in which it does not cover another one. */
    private int lanes(double width) {
        if (width == laidOutFor) {
            return chips.stream().mapToInt(Chip::lane).max().orElse(0) + 1;
        }
        laidOutFor = width;
        List<Double> free = new ArrayList<>();
        Clock clock = null;
        for (int i = 0; i < chips.size(); i++) {
            Chip chip = chips.get(i);
            if (chip.step().moment().clock() != clock) {
                clock = chip.step().moment().clock();
                free.clear();
            }
            double at = x(clock, chip.step().moment().atS(), width);
            int lane = 0;
            while (lane < free.size() && free.get(lane) > at) {
                lane++;
            }
            if (lane == free.size()) {
                free.add(0.0);
            }
            free.set(lane, at + CHIP_EMS * em());
            chips.set(i, new Chip(chip.button(), chip.step(), lane));
        }
        return chips.stream().mapToInt(Chip::lane).max().orElse(0) + 1;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width < 0 ? 60 * em() : width - snappedLeftInset() - snappedRightInset();
        return (1.6 + LANE_EMS * lanes(wide) + ROW_EMS * rows.size() + 1.8) * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - snappedRightInset();
        double em = em();
        int lanes = lanes(width);
        double lanesTop = 1.6 * em;
        double axis = lanesTop + LANE_EMS * lanes * em;
        for (int c = 0; c < clockTitles.size(); c++) {
            clockTitles.get(c).resizeRelocate(x(clocks.get(c), 0, width), 0, 20 * em, 1.4 * em);
        }
        for (Chip chip : chips) {
            double at = x(chip.step().moment().clock(), chip.step().moment().atS(), width);
            double y = axis - (chip.lane() + 1) * LANE_EMS * em;
            chip.button().resizeRelocate(snapPositionX(at), snapPositionY(y), CHIP_EMS * em - 2, LANE_EMS * em - 2);
        }
        for (int r = 0; r < rows.size(); r++) {
            rowTitles.get(r).resizeRelocate(0, axis + r * ROW_EMS * em, LABEL_EMS * em, ROW_EMS * em);
        }
        for (Bar bar : bars) {
            double from = x(bar.span().clock(), bar.span().fromS(), width);
            double to = x(bar.span().clock(), bar.span().toS(), width);
            double y = axis + rows.indexOf(bar.span().what()) * ROW_EMS * em + 0.3 * em;
            bar.region().resizeRelocate(from, y, Math.max(1, to - from), 0.6 * em);
        }
        double below = axis + rows.size() * ROW_EMS * em + 0.2 * em;
        for (Tick tick : ticks) {
            double at = x(tick.clock(), tick.atS(), width);
            double wide = tick.label().prefWidth(-1);
            double left = tick.atS() == 0 ? at : Math.min(at - wide / 2, width - wide);
            tick.label().resizeRelocate(left, below, wide, 1.3 * em);
        }
    }
}
