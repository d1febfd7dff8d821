package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.numerics.CancelToken;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.NeededState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What would make the heat enough. A figure is named only after the rig was tried with it: the heat's margin holds then, and
 * nothing fails that does not fail now. Otherwise only the direction is said.
 */
final class HeatRemedy {
    /** Steps by which a first guess is raised until it does. */
    private static final double[] TRIES = {1, 1.15, 1.35, 1.6, 2};

    private final Asked asked;
    private final List<Margin> now;
    private final CancelToken cancel;

    private HeatRemedy(Asked asked, List<Margin> now, CancelToken cancel) {
        this.asked = asked;
        this.now = now;
        this.cancel = cancel;
    }

    /**
     * The remedy in words.
     *
     * @param now the margins at rest as they are
     */
    static String of(Asked asked, NeededState needed, HeatLimiter limiter, List<Margin> now, CancelToken cancel) {
        return new HeatRemedy(asked, now, cancel).tested(needed, limiter).orElse(limiter.cure());
    }

    private Optional<String> tested(NeededState needed, HeatLimiter limiter) {
        Rig rig = asked.rig();
        HeatSource source = rig.heatSource();
        return switch (limiter.kind()) {
            case LEVEL -> {
                List<Schedule.Step> steps = new ArrayList<>(rig.schedule().steps());
                Schedule.Step last = steps.remove(steps.size() - 1);
                steps.add(new Schedule.Power(last.atS(), 1));
                yield does(rig.withSchedule(new Schedule(steps)))
                        ? Optional.of(AnswerText.REMEDY_LEVEL.say())
                        : Optional.empty();
            }
            case RATING -> {
                double least = HeatLimiter.wantedRatio(rig) * needed.heatNeededW();
                double first = source.ratedPowerW() * least / Math.max(1, needed.heatAvailableW());
                yield first(first)
                        .flatMap(watts -> least(watts, w -> rig.withHeatSource(source.withRatedPower(w)))
                                .map(w -> AnswerText.REMEDY_RATING.say(Say.power(w))));
            }
            case CONTACT -> {
                ContactBody body = source.body().orElseThrow();
                double passed = body.conductance(asked.values());
                double first = passed
                        * HeatLimiter.wantedRatio(rig)
                        * needed.heatNeededW()
                        / Math.max(1, needed.heatAvailableW());
                yield first(first)
                        .flatMap(h -> least(h, x -> rig.withHeatSource(source.withBody(b -> b.withConductance(x))))
                                .map(h2 -> AnswerText.REMEDY_CONTACT.say(Say.coefficient(h2), limiter.cure())));
            }
            case OFF, NOT_FERROUS, FLAME_WIDER_THAN_BASE, SOURCE_TEMPERATURE, WALL_CONDUCTION -> Optional.empty();
        };
    }

    /** A change of one figure. */
    private interface Change {
        Rig to(double figure);
    }

    private static Optional<Double> first(double figure) {
        return Double.isFinite(figure) && figure > 0 ? Optional.of(figure) : Optional.empty();
    }

    /** The least figure, of two digits as it is said, that does. */
    private Optional<Double> least(double first, Change change) {
        for (double more : TRIES) {
            double figure = roundedUp(more * first);
            if (does(change.to(figure))) {
                return Optional.of(figure);
            }
        }
        return Optional.empty();
    }

    private static double roundedUp(double figure) {
        double unit = Math.pow(10, Math.floor(Math.log10(figure)) - 1);
        return Math.ceil(figure / unit - 1e-9) * unit;
    }

    private boolean does(Rig rig) {
        cancel.check();
        try {
            List<Margin> then = RestAnswer.of(asked.with(rig, asked.values())).margins();
            Set<MarginId> failing =
                    now.stream().filter(Margin::fails).map(Margin::id).collect(Collectors.toSet());
            return then.stream().anyMatch(m -> m.id() == MarginId.HEAT && m.status() == Margin.Status.HOLDS)
                    && then.stream().noneMatch(m -> m.fails() && !failing.contains(m.id()));
        } catch (ComputationException e) {
            // a rig with which the model finds no state is no remedy
            return false;
        }
    }
}
