package boilwright.thermal;

import boilwright.numerics.OdeSystem;
import boilwright.rig.Schedule;
import java.util.List;

/** A model that follows a schedule: levels change at stop points only. */
final class RunSystem implements OdeSystem {
    private final PumpModel model;
    private final List<Schedule.Step> steps;
    private int level = -1;

    RunSystem(PumpModel model, List<Schedule.Step> steps) {
        this.model = model;
        this.steps = steps;
        follow(0);
    }

    /** Sets the source to the level that holds at t. */
    private void follow(double t) {
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
        return steps.get(steps.size() - 1).atS();
    }

    double[] stopPoints() {
        return steps.stream().mapToDouble(Schedule.Step::atS).filter(t -> t > 0).toArray();
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
