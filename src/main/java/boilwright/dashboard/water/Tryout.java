package boilwright.dashboard.water;

import boilwright.answers.Asked;
import boilwright.answers.WaterTrial;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Latest;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.units.PhysicalConstants;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleDoubleProperty;

/** A temperature and a flow that are tried without changing the rig, with what comes of them. Knows no control. */
final class Tryout {
    private static final double LITRE_PER_MIN = 1e-3 / 60;
    /** Nearer than this a value is the rig's own. */
    private static final double SAME_K = 0.05;

    private static final double SAME_FLOW = 0.005 * LITRE_PER_MIN;

    private final DoubleProperty temperatureK = new SimpleDoubleProperty(this, "temperatureK", 293.15);
    private final DoubleProperty flowM3PerS = new SimpleDoubleProperty(this, "flowM3PerS");
    private final ReadOnlyObjectWrapper<WaterTrial> outcome = new ReadOnlyObjectWrapper<>(this, "outcome");
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper(this, "refusal", "");
    private final PageContext context;
    private final Latest latest;
    private Asked asked;
    private Rig rig;
    private SupplyHandle handle;
    private double ownFlow;
    private boolean quiet;

    Tryout(PageContext context, Latest latest) {
        this.context = context;
        this.latest = latest;
        temperatureK.addListener((property, before, now) -> request());
        flowM3PerS.addListener((property, before, now) -> request());
    }

    /** Begins anew with a rig's own temperature and flow. */
    void begin(WaterFound found) {
        asked = found.water().check().asked();
        rig = asked.rig();
        handle = SupplyHandle.of(rig.cooling().supply());
        ownFlow = found.water().steady().flow().volumeFlowM3PerS();
        reset();
    }

    /** Goes back to the rig's own temperature and flow. */
    void reset() {
        quiet = true;
        temperatureK.set(rig.cooling().inletTemperatureK());
        flowM3PerS.set(ownFlow);
        quiet = false;
        request();
    }

    /** Requests again what is tried. */
    void request() {
        if (quiet || rig == null) {
            return;
        }
        Asked tried = asked;
        double k = triedK();
        OptionalDouble flow = isFlowMoved() ? OptionalDouble.of(triedFlow()) : OptionalDouble.empty();
        latest.request(
                (cancel, progress) -> WaterTrial.of(tried, k, flow, cancel),
                now -> {
                    refusal.set("");
                    outcome.set(now);
                },
                refusal::set);
    }

    boolean isTemperatureMoved() {
        return Math.abs(temperatureK.get() - rig.cooling().inletTemperatureK()) >= SAME_K;
    }

    boolean isFlowMoved() {
        return Math.abs(flowM3PerS.get() - ownFlow) >= SAME_FLOW;
    }

    /** The temperature that is tried, K: to a tenth of a degree, unless it is the rig's own. */
    double triedK() {
        return isTemperatureMoved()
                ? Math.rint(10 * (temperatureK.get() - PhysicalConstants.ZERO_CELSIUS_K)) / 10
                        + PhysicalConstants.ZERO_CELSIUS_K
                : rig.cooling().inletTemperatureK();
    }

    /** The flow that is tried, m3/s: to a hundredth of a litre a minute, unless it is the rig's own. */
    double triedFlow() {
        return isFlowMoved() ? Math.rint(100 * flowM3PerS.get() / LITRE_PER_MIN) / 100 * LITRE_PER_MIN : ownFlow;
    }

    /** Why what is tried cannot be taken into the rig; empty when it can. */
    Optional<String> whyNot() {
        if (rig == null || !isTemperatureMoved() && !isFlowMoved()) {
            return Optional.of(WindowText.say("water.try.nothing-moved"));
        }
        if (isFlowMoved() && !handle.flowIsGiven()) {
            return Optional.of(WindowText.say("water.try.flow-follows", WaterWords.flow(ownFlow)));
        }
        return isTemperatureMoved() ? handle.fixedWhy() : Optional.empty();
    }

    /**
     * Takes what is tried into the rig, as one edit.
     *
     * @return the words of a refusal; empty when it was taken
     */
    String take() {
        boolean temperature = isTemperatureMoved();
        boolean flow = isFlowMoved();
        double k = triedK();
        double m3PerS = triedFlow();
        boolean accepted = context.change(
                WindowText.say("water.try.edit", WaterWords.temperature(k), WaterWords.flow(m3PerS)), fields -> {
                    RigFields changed = temperature ? fields.with(handle.temperaturePath(), k) : fields;
                    return flow ? changed.with(SupplyHandle.FLOW_PATH, m3PerS) : changed;
                });
        return accepted ? "" : context.refusal();
    }

    /** What can be turned at the rig's supply; null before the first rig. */
    SupplyHandle handle() {
        return handle;
    }

    /** The rig's own flow, m3/s. */
    double ownFlow() {
        return ownFlow;
    }

    /** Temperature that is tried, K. */
    DoubleProperty temperatureKProperty() {
        return temperatureK;
    }

    /** Flow that is tried, m3/s. */
    DoubleProperty flowM3PerSProperty() {
        return flowM3PerS;
    }

    /** What comes of it; null until it is known. */
    ReadOnlyObjectProperty<WaterTrial> outcomeProperty() {
        return outcome.getReadOnlyProperty();
    }

    /** Why nothing can be said of it; empty when it can. */
    ReadOnlyStringProperty refusalProperty() {
        return refusal.getReadOnlyProperty();
    }
}
