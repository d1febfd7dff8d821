package boilwright.estimate;

import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import boilwright.rig.file.RigReader;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;

/** Makes a whole rig from what can be measured on the outside of a pump. The same measurements give the same rig. */
public final class RigEstimator {
    private static final String NEW_RIG = "the new rig";
    /** Gap with which parts are checked before the throats are known: the least that is usual, m. */
    private static final double DRAFT_GAP_M = 2e-4;

    private final OutsideMeasurements measured;
    private final Set<String> acceptedFields;
    private final GuessBook book = new GuessBook();
    private final List<String> notes = new ArrayList<>();
    private Optional<ThroatFit> throats = Optional.empty();

    private RigEstimator(OutsideMeasurements measured, Set<String> acceptedFields) {
        this.measured = measured;
        this.acceptedFields = acceptedFields;
    }

    /**
     * The rig with these measurements, everything else as it usually is.
     *
     * @param measured what was measured; each value allowed by the field catalogue
     * @param fluid the fluid that it names
     * @param acceptedFields paths of the fields whose unusual values are meant as they are
     * @throws InputRefusedException when the measurements do not fit one another; with every fault found
     * @throws ComputationException when the model finds no working state of such a pump
     */
    public static RigEstimate estimate(OutsideMeasurements measured, WorkingFluid fluid, Set<String> acceptedFields) {
        return new RigEstimator(measured, acceptedFields).estimate(TabulatedFluid.of(fluid));
    }

    private RigEstimate estimate(TabulatedFluid fluid) {
        List<Double> known = measured.known().throatGapsM();
        refuseBadThroats(known);
        Rig draft = draft(known.isEmpty() ? leastGaps() : known);
        RigReader.check(draft, NEW_RIG, acceptedFields);
        Rig rig = known.isEmpty() ? solved(draft, new ThroatSolver(draft, fluid)) : draft;
        RigReader.check(rig, NEW_RIG, acceptedFields);
        notes.add(EstimateText.NOTE_NO_CAP.say());
        notes.add(EstimateText.NOTE_FULL_POWER.say());
        return new RigEstimate(rig.withGuesses(book.paths()), inOrder(rig), throats, notes);
    }

    private void refuseBadThroats(List<Double> known) {
        if (!known.isEmpty() && measured.known().worksAtW().isPresent()) {
            throw new InputRefusedException(Message.of(MessageKey.ESTIMATE_GAPS_AND_POWER));
        }
        if (!known.isEmpty() && known.size() != measured.stages()) {
            throw new InputRefusedException(Message.of(
                    MessageKey.ESTIMATE_GAPS_COUNT,
                    Integer.toString(known.size()),
                    Integer.toString(measured.stages())));
        }
    }

    private List<Double> leastGaps() {
        return DoubleStream.generate(() -> DRAFT_GAP_M)
                .limit(measured.stages())
                .boxed()
                .toList();
    }

    private Rig draft(List<Double> gapsM) {
        VesselDraft vessel = new VesselDraft(measured, book);
        SurroundingsDraft surroundings = new SurroundingsDraft(measured, book);
        Boiler boiler = vessel.boiler();
        Column column = vessel.column();
        List<Stage> stages = vessel.stages(column, gapsM);
        return new Rig(
                measured.name().isEmpty() ? name() : measured.name(),
                "",
                measured.fluidId(),
                measured.chargeM3(),
                boiler,
                column,
                stages,
                vessel.body(stages),
                Optional.empty(),
                new SourceDraft(measured, book, boiler, OptionalDouble.empty()).source(),
                new Schedule(List.of(new Schedule.Power(0, 1))),
                surroundings.foreline(),
                surroundings.cooling(stages),
                surroundings.room(),
                Limits.USUAL,
                Map.of());
    }

    private String name() {
        double bore = GuessBook.usual("body.innerDiameter", measured.boreM());
        String text = QuantityWriter.exact(
                bore, UnitTable.find("mm", Dimension.LENGTH).orElseThrow());
        return EstimateText.NAME_OF_RIG.say(text, measured.material().id());
    }

    private Rig solved(Rig draft, ThroatSolver solver) {
        OptionalDouble power = measured.known().worksAtW();
        return power.isPresent() ? forPower(draft, solver, power.getAsDouble()) : forTrade(draft, solver);
    }

    private Rig forTrade(Rig draft, ThroatSolver solver) {
        WorkingPower usual = WorkingPower.usual(measured);
        ThroatFit fit = solver.forHeat(usual.netHeatW());
        if (measured.known().nameplate().isEmpty()) {
            notes.add(0, EstimateText.NOTE_RATING_SAYS_NOTHING.say());
        }
        if (fit.end() != ThroatFit.End.FOUND) {
            notes.add(endOfRange(fit));
        } else if (measured.known().nameplate().isPresent()) {
            notes.add(EstimateText.NOTE_THROATS_NAMEPLATE.say(
                    top(fit),
                    watts(fit.netHeatW()),
                    pascal(fit),
                    watts(measured.known().nameplate().get().powerW()),
                    watts(usual.lowW()),
                    watts(usual.highW())));
        } else {
            notes.add(EstimateText.NOTE_THROATS_TRADE.say(
                    top(fit), watts(fit.netHeatW()), watts(usual.lowW()), watts(usual.highW()), pascal(fit)));
        }
        return fitted(draft, fit, draft.heatSource());
    }

    private Rig forPower(Rig draft, ThroatSolver solver, double powerW) {
        double[] shares = SourceDraft.shares(measured);
        double least = shares[0] * powerW;
        double greatest = shares[1] * powerW;
        ThroatFit fit = solver.forSource(atPower(draft, powerW, OptionalDouble.empty()), least, greatest);
        OptionalDouble contact = fit.end() == ThroatFit.End.NARROWEST
                ? contact(solver, draft, powerW, least, greatest)
                : OptionalDouble.empty();
        if (contact.isPresent()) {
            double usual = usualContact(draft).orElseThrow().nominal();
            notes.add(EstimateText.NOTE_CONTACT.say(contact(contact.getAsDouble()), contact(usual), watts(powerW)));
            return fitted(draft, fit, new SourceDraft(measured, book, draft.boiler(), contact).source());
        }
        notes.add(
                fit.end() == ThroatFit.End.FOUND
                        ? EstimateText.NOTE_THROATS_WORKS_AT.say(
                                top(fit), watts(fit.netHeatW()), watts(least), watts(greatest), pascal(fit))
                        : endOfRange(fit));
        return fitted(draft, fit, draft.heatSource());
    }

    private static String endOfRange(ThroatFit fit) {
        EstimateText end =
                fit.end() == ThroatFit.End.NARROWEST ? EstimateText.NOTE_NARROWEST : EstimateText.NOTE_WIDEST;
        return end.say(watts(fit.netHeatW()), pascal(fit), watts(fit.heatNeededW()));
    }

    private Rig fitted(Rig draft, ThroatFit fit, HeatSource source) {
        throats = Optional.of(fit);
        for (int i = 0; i < fit.gapsM().size(); i++) {
            book.mark("stages[" + i + "].throatGap", fit, EstimateText.BASIS_THROAT_GAP);
        }
        return RigParts.with(draft, fit.gapsM(), source, draft.limits());
    }

    /** This kind of source with the power at which the pump is said to work, and with a contact when one was solved. */
    private HeatSource atPower(Rig draft, double powerW, OptionalDouble conductance) {
        return new SourceDraft(measured.withRatedPower(powerW), new GuessBook(), draft.boiler(), conductance).source();
    }

    private static Optional<Parameter> usualContact(Rig rig) {
        return rig.heatSource().contact().map(HeatSource.Contact::usualConductance);
    }

    /** The contact with which the pump works all the same; empty when there is none, or none can be guessed. */
    private OptionalDouble contact(ThroatSolver solver, Rig draft, double powerW, double leastW, double greatestW) {
        return usualContact(draft)
                .map(parameter -> solver.contact(
                        conductance -> atPower(draft, powerW, OptionalDouble.of(conductance)),
                        parameter.nominal(),
                        parameter.high(),
                        leastW,
                        greatestW))
                .orElse(OptionalDouble.empty());
    }

    private List<Guess> inOrder(Rig rig) {
        Map<String, Guess> byPath = new LinkedHashMap<>();
        book.guesses().forEach(guess -> byPath.put(guess.path(), guess));
        return RigPaths.of(rig).stream()
                .filter(byPath::containsKey)
                .map(byPath::get)
                .toList();
    }

    private static String top(ThroatFit fit) {
        return QuantityWriter.writeAuto(fit.gapsM().get(fit.gapsM().size() - 1), Dimension.LENGTH);
    }

    private static String watts(double value) {
        return QuantityWriter.writeAuto(value, Dimension.POWER);
    }

    private static String contact(double conductance) {
        return QuantityWriter.writeAuto(conductance, Dimension.HEAT_TRANSFER_COEFFICIENT);
    }

    private static String pascal(ThroatFit fit) {
        return QuantityWriter.writeAuto(fit.workingPressurePa(), Dimension.PRESSURE);
    }
}
