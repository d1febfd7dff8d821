package boilwright.choice;

import boilwright.answers.CheckAnswer;
import boilwright.answers.HeatLimiter;
import boilwright.rig.Rig;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One source on the rig: the rig's own as it is run, another at full power from the rig's own heat-on.
 *
 * @param id id of the source; "present" for the rig's own
 * @param title what people call it
 * @param state how it does
 * @param verdict one sentence
 * @param condition what must be true of the boiler, a whole sentence; empty for nothing
 * @param rig the rig with this source
 * @param check the whole check of that rig
 * @param ratio heat that it could deliver at the temperature of full jets over heat needed there
 * @param jetsLit jets lit at rest
 * @param jetsFull jets full at rest
 * @param fullAfterS from heat-on to full pumping, s; empty when that never comes
 * @param oilRatio the worse margin of oil and oil film; empty when unknown
 * @param glassRatio the worse margin of the glass; empty for metal
 * @param limiter the one thing that keeps it from giving the margin wanted; empty when it gives it
 * @param broken margins that more power brings to their limits and that fail at full power, joined by commas; may be empty
 * @param held what to set once hot; empty when the jets are never all full
 * @param session what a session takes; empty when the jets are never all full
 * @param gas the gas side of it; empty for other sources
 * @param curves source and pump against wall temperature
 */
public record SourceRow(
        String id,
        String title,
        State state,
        String verdict,
        String condition,
        Rig rig,
        CheckAnswer check,
        double ratio,
        int jetsLit,
        int jetsFull,
        OptionalDouble fullAfterS,
        OptionalDouble oilRatio,
        OptionalDouble glassRatio,
        Optional<HeatLimiter> limiter,
        String broken,
        Optional<Held> held,
        Optional<Session> session,
        Optional<GasUse> gas,
        HeatCurves curves) {
    /** Whether it is enough for this boiler, turned down once hot or not; one that asks for another boiler is not. */
    public boolean isEnough() {
        return condition.isEmpty() && (state == State.ENOUGH || state == State.TURN_DOWN);
    }

    /** How the boiler is heated: what a pump takes differs a little between these ways. */
    public enum Way {
        /** By a flame, whose measured efficiency holds the cold losses of the vessel. */
        FLAME("flame"),
        /** In the oil. */
        IN_THE_OIL("in-the-oil"),
        /** Through the wall, by a body that touches it or a field in its base. */
        THROUGH_THE_WALL("through-the-wall");

        private final String id;

        Way(String id) {
            this.id = id;
        }

        /** How files spell it. */
        public String id() {
            return id;
        }
    }

    /** The way in which this source heats. */
    public Way way() {
        return switch (rig.heatSource().path()) {
            case FLAME -> Way.FLAME;
            case OIL -> Way.IN_THE_OIL;
            case CONTACT, BASE, NOWHERE -> Way.THROUGH_THE_WALL;
        };
    }

    /** The same row with the pump's need beside the source's curve. */
    SourceRow beside(List<WallPoint> need) {
        HeatCurves with = new HeatCurves(curves.delivered(), need, curves.fullJets(), curves.crossing());
        return new SourceRow(
                id,
                title,
                state,
                verdict,
                condition,
                rig,
                check,
                ratio,
                jetsLit,
                jetsFull,
                fullAfterS,
                oilRatio,
                glassRatio,
                limiter,
                broken,
                held,
                session,
                gas,
                with);
    }

    /** How a source does, the best first. */
    public enum State {
        /** Every jet full with the margin wanted, no limit passed even when it is left at full power. */
        ENOUGH("enough"),
        /** The same, but only when it is turned down once hot. */
        TURN_DOWN("turn-down"),
        /** Every jet full, without the margin wanted. */
        TIGHT("tight"),
        /** Every jet full with the margin, but some limit is passed at any setting that fills them. */
        OVER("over"),
        /** Not every jet is full. */
        SHORT("short");

        private final String id;

        State(String id) {
            this.id = id;
        }

        /** How files spell it. */
        public String id() {
            return id;
        }
    }

    /**
     * What to set once hot, for a tenth more heat than full jets need.
     *
     * @param share share of the rated power
     * @param inputW power taken there, W
     */
    public record Held(double share, double inputW) {}

    /**
     * What one session takes: from heat-on to full pumping at full power, then pumping at the held setting.
     *
     * @param warmUpJ energy up to full pumping, J: electrical, or fuel on the gross heating value
     * @param pumpingJ energy of the pumping after that, J
     */
    public record Session(double warmUpJ, double pumpingJ) {
        /** All of it, J. */
        public double totalJ() {
            return warmUpJ + pumpingJ;
        }
    }
}
