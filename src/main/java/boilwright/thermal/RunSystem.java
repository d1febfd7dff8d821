package boilwright.thermal;

import boilwright.numerics.OdeSystem;
import boilwright.rig.Schedule;
import java.util.List;
import java.util.stream.DoubleStream;

/** A model that follows a schedule: levels change at stop points only. */
final class RunSystem implements OdeSystem {
    private final PumpModel model;
    private final List<Schedule.Step> steps;
    private final List<Running.Change> changes;
    private int level = -1;
    private int change = -1;

    /**
     * Follows a schedule while something fails.
     *
     * @param model the model
     * @param steps the schedule
     * @param changes what works from when on, by rising time; until then everything does
     */
    RunSystem(PumpModel model, List<Schedule.Step> steps, List<Running.Change> changes) {
        this.model = model;
        this.steps = steps;
        this.changes = List.copyOf(changes);
        follow(0);
    }

    /** Sets the source to the level that holds at t, and the rest to what works then. */
    private void follow(double t) {
        int works = 0;
        while (works < changes.size() && changes.get(works).atS() <= t) {
            works++;
        }
        if (works != change) {
            change = works;
            (works == 0 ? Running.ALL : changes.get(works - 1).running()).applyTo(model);
        }
        int now = 0;
        while (now + 1 < steps.size() && steps.get(now + 1).atS() <= t) {
            now++;
        }
        if (now != level) {
            level = now;
            model.source.setStep(steps.get(now));
        }
    }

    double lastChangeS() {
        double heat = steps.get(steps.size() - 1).atS();
        return changes.stream().mapToDouble(Running.Change::atS).reduce(heat, Math::max);
    }

    double[] stopPoints() {
        return DoubleStream.concat(
                        steps.stream().mapToDouble(Schedule.Step::atS),
                        changes.stream().mapToDouble(Running.Change::atS))
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
