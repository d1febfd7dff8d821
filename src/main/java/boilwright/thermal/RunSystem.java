package boilwright.thermal;

import boilwright.numerics.OdeSystem;
import boilwright.rig.Schedule;
import java.util.List;
import java.util.stream.DoubleStream;

/** A model that follows a schedule: levels change at stop points only. */
final class RunSystem implements OdeSystem {
    private final PumpModel model;
    private final List<Schedule.Step> steps;
    private final double waterStopsS;
    private int level = -1;

    RunSystem(PumpModel model, List<Schedule.Step> steps) {
        this(model, steps, Double.POSITIVE_INFINITY);
    }

    /**
     * Follows a schedule with water that stops.
     *
     * @param model the model
     * @param steps the schedule
     * @param waterStopsS when the water stops, s; infinity for never
     */
    RunSystem(PumpModel model, List<Schedule.Step> steps, double waterStopsS) {
        this.model = model;
        this.steps = steps;
        this.waterStopsS = waterStopsS;
        follow(0);
    }

    /** Sets the source to the level that holds at t. */
    private void follow(double t) {
        model.water.setRunning(t < waterStopsS);
        int now = 0;
        while (now + 1 < steps.size() && steps.get(now + 1).atS() <= t) {
            now++;
        }
        if (now != level) {
            level = now;
            RunSchedule.apply(model.source, steps.get(now));
        }
    }

    double lastChangeS() {
        double heat = steps.get(steps.size() - 1).atS();
        return waterStopsS < Double.POSITIVE_INFINITY ? Math.max(heat, waterStopsS) : heat;
    }

    double[] stopPoints() {
        return DoubleStream.concat(steps.stream().mapToDouble(Schedule.Step::atS), DoubleStream.of(waterStopsS))
                .filter(t -> t > 0 && t < Double.POSITIVE_INFINITY)
                .sorted()
                .distinct()
                .toArray();
    }

    @Override
    public int size() {
        return model.size();
    }

    @Override
    public void derivative(double t, double[] y, double[] dydt) {
        follow(t);
        model.derivative(t, y, dydt);
    }

    /** Levels change at stop points only, so that between them time does not matter. */
    @Override
    public boolean isAutonomous() {
        return true;
    }

    @Override
    public void jacobian(double t, double[] y, double[] dydt, double[][] jacobian) {
        follow(t);
        model.jacobian(t, y, dydt, jacobian);
    }

    @Override
    public boolean isAdmissible(double t, double[] y) {
        return model.isAdmissible(t, y);
    }

    @Override
    public String componentName(int component) {
        return model.componentName(component);
    }
}
