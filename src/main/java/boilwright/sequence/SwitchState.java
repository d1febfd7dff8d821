package boilwright.sequence;

import java.util.OptionalDouble;

/** Which switch stands how while a plan is walked through. */
final class SwitchState {
    boolean backing;
    boolean cooling;
    boolean outletOpen;
    boolean roomAired;
    boolean heatOn;
    boolean valveOpen;
    /** Whether air was let onto the oil. */
    boolean airInPump;

    double backingOnS;
    /** When the heat went on, s from cold; NaN while it is off or was looked back over already. */
    double heatOnS = Double.NaN;
    /** When the heat went off on the clock from hot, s. */
    OptionalDouble heatOffHotS = OptionalDouble.empty();
    /** When the chamber's roughing began, s on the clock of the moment. */
    OptionalDouble roughFromS = OptionalDouble.empty();
    /** Hottest oil since the cooling stands, K; no wall in its vapour gets hotter. */
    double hottestDryK;

    private SwitchState() {}

    /** Everything off and cold; or a hot pump at work with everything on. */
    static SwitchState atStart(Variant variant, PumpSetup setup) {
        SwitchState state = new SwitchState();
        boolean hot = variant.isFromHot();
        state.backing = hot;
        state.cooling = hot;
        state.outletOpen = hot;
        state.roomAired = hot;
        state.heatOn = hot;
        // a chamber that is roughed through the pump stands open to it from the beginning
        state.valveOpen = setup.hasValve() && (hot || !setup.isRoughedApart());
        return state;
    }
}
