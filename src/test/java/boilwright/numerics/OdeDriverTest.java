package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OdeDriverTest {
    static Stream<Supplier<OdeIntegrator>> methods() {
        return Stream.of(StabilizedExplicit::new, Rosenbrock::new);
    }

    private static final OdeSystem FALL = Problems.of(2, (t, y, f) -> {
        f[0] = y[1];
        f[1] = -9.81;
    });

    /** A stone thrown up at 10 m/s from 1 m: exact times of the top and of the ground. */
    @ParameterizedTest
    @MethodSource("methods")
    void locatesCrossingsInTheOrderOfTime(Supplier<OdeIntegrator> method) {
        List<String> told = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        EventFunction ground = Problems.event(1, EventFunction.Direction.FALLING, (t, y) -> y[0], (t, y, rising) -> {
            told.add("ground");
            times.add(t);
            return EventFunction.Action.STOP;
        });
        EventFunction top = Problems.event(2, EventFunction.Direction.BOTH, (t, y) -> y[1], (t, y, rising) -> {
            told.add(rising ? "bottom" : "top");
            times.add(t);
            return EventFunction.Action.CONTINUE;
        });
        EventFunction neverFalling =
                Problems.event(3, EventFunction.Direction.RISING, (t, y) -> y[1], (t, y, rising) -> {
                    throw new AssertionError("the speed never rises");
                });
        OdeOutcome outcome = new OdeDriver(FALL, method.get(), new Tolerances(1e-8, 1e-8, 1e-8))
                .events(List.of(ground, top, neverFalling))
                .run(0, new double[] {1, 10}, 100);
        double exactTop = 10 / 9.81;
        double exactGround = (10 + Math.sqrt(100 + 2 * 9.81)) / 9.81;
        assertThat(told).containsExactly("top", "ground");
        assertThat(times.get(0)).isBetween(exactTop - 1e-6, exactTop + 1e-3);
        assertThat(times.get(1)).isBetween(exactGround - 1e-6, exactGround + 1e-3);
        assertThat(outcome.stoppedBy()).isSameAs(ground);
        assertThat(outcome.time()).isEqualTo(times.get(1));
        assertThat(outcome.state()[1]).isCloseTo(10 - 9.81 * outcome.time(), within(1e-6));
    }

    /** A double crossing inside one long step is seen thanks to the check points. */
    @Test
    void checkPointsSeeAShortDip() {
        OdeSystem clock = Problems.of(1, (t, y, f) -> f[0] = 1);
        List<Double> times = new ArrayList<>();
        EventFunction dip =
                Problems.event(1, EventFunction.Direction.BOTH, (t, y) -> Math.abs(t - 5) - 2, (t, y, rising) -> {
                    times.add(t);
                    return EventFunction.Action.CONTINUE;
                });
        new OdeDriver(clock, new StabilizedExplicit(), new Tolerances(1e-3, 1e-3))
                .events(List.of(dip))
                .run(0, new double[1], 10);
        assertThat(times).hasSize(2);
        assertThat(times.get(0)).isBetween(3.0, 3.001);
        assertThat(times.get(1)).isBetween(7.0, 7.001);
    }

    /**
     * On/off control with 10 K hysteresis: heat 2 K/s less a loss of 0.01/s of the excess. The exact rise and fall times
     * between 95 K and 105 K excess follow from the two exponentials.
     */
    @ParameterizedTest
    @MethodSource("methods")
    void anOnOffControlSwitchesWithTheExactPeriod(Supplier<OdeIntegrator> method) {
        boolean[] on = {true};
        OdeSystem heated = Problems.of(1, (t, y, f) -> f[0] = (on[0] ? 2 : 0) - 0.01 * y[0]);
        List<Double> switchedOff = new ArrayList<>();
        List<Double> switchedOn = new ArrayList<>();
        EventFunction tooHot =
                Problems.event(1, EventFunction.Direction.RISING, (t, y) -> y[0] - 105, (t, y, rising) -> {
                    on[0] = false;
                    switchedOff.add(t);
                    return EventFunction.Action.RESTART;
                });
        EventFunction tooCold =
                Problems.event(2, EventFunction.Direction.FALLING, (t, y) -> y[0] - 95, (t, y, rising) -> {
                    on[0] = true;
                    switchedOn.add(t);
                    return EventFunction.Action.RESTART;
                });
        OdeOutcome outcome = new OdeDriver(heated, method.get(), new Tolerances(1e-7, 1e-7))
                .events(List.of(tooHot, tooCold))
                .eventTolerance(1e-6)
                .run(0, new double[] {0}, 2000);
        double firstOff = -100 * Math.log((200.0 - 105) / 200);
        double fall = 100 * Math.log(105.0 / 95);
        double rise = 100 * Math.log((200.0 - 95) / (200 - 105));
        assertThat(switchedOff.get(0)).isCloseTo(firstOff, within(1e-3));
        for (int i = 0; i < switchedOff.size(); i++) {
            assertThat(switchedOff.get(i)).isCloseTo(firstOff + i * (rise + fall), within(2e-2));
        }
        for (int i = 0; i < switchedOn.size(); i++) {
            assertThat(switchedOn.get(i)).isCloseTo(firstOff + fall + i * (rise + fall), within(2e-2));
        }
        assertThat(switchedOff).hasSize(1 + (int) ((2000 - firstOff) / (rise + fall)));
        assertThat(outcome.statistics().restarts()).isEqualTo(1 + switchedOff.size() + switchedOn.size());
    }

    /** A source that is on from 10 s to 20 s only: no step may reach across, and both one-sided values are used. */
    @ParameterizedTest
    @MethodSource("methods")
    void stopPointsKeepAJumpExact(Supplier<OdeIntegrator> method) {
        List<Double> asked = new ArrayList<>();
        OdeSystem pulse = Problems.of(1, (t, y, f) -> {
            asked.add(t);
            f[0] = t >= 10 && t < 20 ? 3 : 0;
        });
        List<Double> started = new ArrayList<>();
        List<double[]> stretches = new ArrayList<>();
        OdeOutcome outcome = new OdeDriver(pulse, method.get(), new Tolerances(1e-6, 1e-6))
                .stopPoints(20, 10, 40)
                .handler(new StepHandler() {
                    @Override
                    public void stretch(StepInterpolant solution, double from, double to) {
                        stretches.add(new double[] {from, to});
                        double middle = 0.5 * (from + to);
                        assertThat(Problems.stateAt(solution, 1, middle)[0])
                                .isCloseTo(3 * Math.max(0, Math.min(middle, 20) - 10), within(1e-10));
                    }

                    @Override
                    public void started(double t, double[] y) {
                        started.add(t);
                    }
                })
                .run(0, new double[1], 30);
        assertThat(outcome.state()[0]).isCloseTo(30, within(1e-10));
        assertThat(outcome.statistics().rejected()).isZero();
        assertThat(started).containsExactly(0.0, 10.0, 20.0);
        assertThat(asked).allMatch(t -> t < 30);
        assertThat(stretches.get(0)[0]).isZero();
        for (int i = 1; i < stretches.size(); i++) {
            assertThat(stretches.get(i)[0]).isEqualTo(stretches.get(i - 1)[1]);
        }
        assertThat(stretches.get(stretches.size() - 1)[1]).isEqualTo(30);
    }

    @Test
    void aJumpAtAStopPointIsAnEventThere() {
        OdeSystem still = Problems.of(1, (t, y, f) -> f[0] = 0);
        List<Double> times = new ArrayList<>();
        EventFunction jump =
                Problems.event(1, EventFunction.Direction.RISING, (t, y) -> t >= 4 ? 1 : -1, (t, y, rising) -> {
                    times.add(t);
                    return EventFunction.Action.CONTINUE;
                });
        new OdeDriver(still, new StabilizedExplicit(), new Tolerances(1e-3, 1e-3))
                .events(List.of(jump))
                .stopPoints(4)
                .run(0, new double[1], 10);
        assertThat(times).containsExactly(4.0);
    }

    /** One event switches a mode that makes another value jump: the second is told at the same time, once. */
    @Test
    void aJumpBroughtAboutByAnotherEventIsTold() {
        boolean[] open = {false};
        OdeSystem ramp = Problems.of(1, (t, y, f) -> f[0] = 1);
        List<String> told = new ArrayList<>();
        EventFunction opens = Problems.event(1, EventFunction.Direction.RISING, (t, y) -> y[0] - 2, (t, y, rising) -> {
            open[0] = true;
            told.add("opens");
            return EventFunction.Action.RESTART;
        });
        EventFunction flows =
                Problems.event(2, EventFunction.Direction.RISING, (t, y) -> open[0] ? 1 : -1, (t, y, rising) -> {
                    told.add("flows at " + Math.round(t));
                    return EventFunction.Action.CONTINUE;
                });
        new OdeDriver(ramp, new StabilizedExplicit(), new Tolerances(1e-3, 1e-3))
                .events(List.of(flows, opens))
                .run(0, new double[1], 10);
        assertThat(told).containsExactly("opens", "flows at 2");
    }

    /**
     * A tank that empties at an even rate: error control would let steps grow far past the empty tank, a state that
     * can't exist. Such trial states are given up, never moved, and the time stays exact.
     */
    @ParameterizedTest
    @MethodSource("methods")
    void aStateThatCannotExistIsGivenUp(Supplier<OdeIntegrator> method) {
        OdeSystem emptying = new OdeSystem() {
            @Override
            public int size() {
                return 1;
            }

            @Override
            public void derivative(double t, double[] y, double[] dydt) {
                assertThat(y[0]).as("only states that can exist are asked for").isGreaterThanOrEqualTo(0);
                dydt[0] = -1;
            }

            @Override
            public boolean isAdmissible(double t, double[] y) {
                return y[0] >= 0;
            }
        };
        EventFunction nearlyEmpty = Problems.event(
                1, EventFunction.Direction.FALLING, (t, y) -> y[0] - 0.5, (t, y, rising) -> EventFunction.Action.STOP);
        OdeOutcome outcome = new OdeDriver(emptying, method.get(), new Tolerances(1e-4, 1e-4))
                .events(List.of(nearlyEmpty))
                .run(0, new double[] {1000}, 1e6);
        assertThat(outcome.statistics().rejected()).isPositive();
        assertThat(outcome.time()).isBetween(999.5 - 1e-9, 999.501);
        assertThat(outcome.state()[0]).isBetween(0.499 - 1e-9, 0.5);
    }

    @ParameterizedTest
    @MethodSource("methods")
    void aFaultInATrialStateIsTriedAgainAndInTheEndReported(Supplier<OdeIntegrator> method) {
        OdeSystem wall = Problems.of(1, (t, y, f) -> {
            if (y[0] > 5) {
                throw new ComputationException(Message.of(MessageKey.INTERNAL_FAULT, "beyond the table"));
            }
            f[0] = 1;
        });
        assertThatThrownBy(() -> new OdeDriver(wall, method.get(), new Tolerances(1e-3, 1e-3)).run(0, new double[1], 9))
                .isInstanceOfSatisfying(ComputationException.class, e -> {
                    assertThat(e.reason().key()).isEqualTo(MessageKey.STEP_LEAVES_RANGE);
                    assertThat(Double.parseDouble(e.reason().arguments().get(0)))
                            .isCloseTo(5, within(1e-6));
                    assertThat(e.reason().arguments().get(2)).isEqualTo("component 0");
                    assertThat(e).hasRootCauseMessage("Something failed that should not have: beyond the table");
                });
        OdeSystem notANumber = Problems.of(1, (t, y, f) -> f[0] = y[0] > 5 ? Double.NaN : 1);
        assertThatThrownBy(() ->
                        new OdeDriver(notANumber, method.get(), new Tolerances(1e-3, 1e-3)).run(0, new double[1], 9))
                .isInstanceOf(ComputationException.class);
        assertThatThrownBy(() ->
                        new OdeDriver(notANumber, method.get(), new Tolerances(1e-3, 1e-3)).run(0, new double[] {6}, 9))
                .isInstanceOfSatisfying(
                        ComputationException.class,
                        e -> assertThat(e.reason().key()).isEqualTo(MessageKey.DERIVATIVE_NOT_A_NUMBER));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void aBlowUpIsReportedWithItsTime(Supplier<OdeIntegrator> method) {
        // y' = y^2 from 1 becomes infinite at t = 1.
        OdeSystem blowUp = Problems.of(1, (t, y, f) -> f[0] = y[0] * y[0]);
        assertThatThrownBy(() ->
                        new OdeDriver(blowUp, method.get(), new Tolerances(1e-5, 1e-5)).run(0, new double[] {1}, 2))
                .isInstanceOfSatisfying(
                        ComputationException.class,
                        e -> assertThat(Double.parseDouble(
                                        e.reason().arguments().get(0)))
                                .isCloseTo(1, within(1e-2)));
    }

    /** Two modes that switch each other for ever at one time: reported, not looped over. */
    @Test
    void eventsThatChaseEachOtherAreReported() {
        int[] mode = {0};
        OdeSystem clock = Problems.of(1, (t, y, f) -> f[0] = 1);
        Problems.Told next = (t, y, rising) -> {
            mode[0] = (mode[0] + 1) % 4;
            return EventFunction.Action.RESTART;
        };
        List<EventFunction> chase = List.of(
                Problems.event(1, EventFunction.Direction.RISING, (t, y) -> y[0] - 3, next),
                Problems.event(2, EventFunction.Direction.BOTH, (t, y) -> mode[0] % 2 == 1 ? 1 : -1, next),
                Problems.event(3, EventFunction.Direction.BOTH, (t, y) -> mode[0] >= 2 ? 1 : -1, next));
        assertThatThrownBy(() -> new OdeDriver(clock, new StabilizedExplicit(), new Tolerances(1e-6, 1e-6))
                        .events(chase)
                        .run(0, new double[1], 10))
                .isInstanceOfSatisfying(ComputationException.class, e -> {
                    assertThat(e.reason().key()).isEqualTo(MessageKey.EVENTS_WITHOUT_PROGRESS);
                    assertThat(Double.parseDouble(e.reason().arguments().get(0)))
                            .isCloseTo(3, within(1e-3));
                });
    }

    /** A mode that switches back at once slides along its threshold in tiny steps: the step limit ends that. */
    @Test
    void tooManyStepsAreReported() {
        boolean[] up = {true};
        OdeSystem sliding = Problems.of(1, (t, y, f) -> f[0] = up[0] ? 1 : -1);
        EventFunction over = Problems.event(7, EventFunction.Direction.BOTH, (t, y) -> y[0] - 1, (t, y, rising) -> {
            up[0] = !rising;
            return EventFunction.Action.RESTART;
        });
        assertThatThrownBy(() -> new OdeDriver(sliding, new StabilizedExplicit(), new Tolerances(1e-6, 1e-6))
                        .events(List.of(over))
                        .mostSteps(100)
                        .run(0, new double[1], 1000))
                .isInstanceOfSatisfying(
                        ComputationException.class,
                        e -> assertThat(e.reason().key())
                                .isIn(MessageKey.STEPS_USED_UP, MessageKey.EVENTS_WITHOUT_PROGRESS));
    }

    /** Levels that lie close to each other and to a stop point, some with a restart: each is told once, in order. */
    @ParameterizedTest
    @MethodSource("methods")
    void closeEventsKeepTheirOrder(Supplier<OdeIntegrator> method) {
        OdeSystem clock = Problems.of(1, (t, y, f) -> f[0] = t < 5 ? 1 : 2);
        List<Integer> order = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        List<EventFunction> marks = new ArrayList<>();
        double[] levels = {5, 4.9999, 4.9995, 5.0002, 5.0, 7.5, 1e-4};
        for (int i = 0; i < levels.length; i++) {
            int id = i;
            EventFunction.Action action = i % 2 == 0 ? EventFunction.Action.RESTART : EventFunction.Action.CONTINUE;
            marks.add(Problems.event(i, EventFunction.Direction.RISING, (t, y) -> y[0] - levels[id], (t, y, rising) -> {
                order.add(id);
                times.add(t);
                return action;
            }));
        }
        OdeOutcome outcome = new OdeDriver(clock, method.get(), new Tolerances(1e-6, 1e-6))
                .events(marks)
                .stopPoints(5)
                .eventTolerance(1e-6)
                .run(0, new double[1], 10);
        assertThat(order).startsWith(6, 2, 1).endsWith(3, 5).hasSize(levels.length);
        assertThat(times).isSorted();
        assertThat(outcome.state()[0]).isCloseTo(15, within(1e-9));
    }

    @Test
    void stopsSoonAfterACancel() {
        CancelToken token = new CancelToken();
        int[] calls = {0};
        OdeSystem slow = Problems.of(1, (t, y, f) -> {
            calls[0]++;
            if (calls[0] == 1000) {
                token.cancel();
            }
            f[0] = -1e6 * (y[0] - Math.cos(t));
        });
        assertThatThrownBy(() -> new OdeDriver(slow, new StabilizedExplicit(), new Tolerances(1e-8, 1e-8))
                        .cancel(token)
                        .run(0, new double[] {1}, 1e4))
                .isInstanceOf(CancelledException.class);
        assertThat(calls[0]).isBetween(1000, 1064);
        assertThat(token.isCancelled()).isTrue();
    }

    @Test
    void progressNeverFallsAndEndsAtOne() {
        List<Double> fractions = new ArrayList<>();
        new OdeDriver(FALL, new StabilizedExplicit(), new Tolerances(1e-6, 1e-6, 1e-6))
                .progress(
                        (fraction, phase) -> {
                            assertThat(phase).isEqualTo("fall");
                            fractions.add(fraction);
                        },
                        "fall")
                .run(0, new double[] {1, 10}, 10);
        assertThat(fractions).isSorted().startsWith(0.0).endsWith(1.0);
    }

    @ParameterizedTest
    @MethodSource("methods")
    void theSameInputGivesTheSameBits(Supplier<OdeIntegrator> method) {
        OdeIntegrator integrator = method.get();
        OdeSystem stiff = Problems.protheroRobinson(-3000);
        OdeOutcome first = new OdeDriver(stiff, integrator, new Tolerances(1e-6, 1e-6)).run(0, new double[] {0}, 7);
        new OdeDriver(FALL, integrator, new Tolerances(1e-6, 1e-6, 1e-6)).run(0, new double[] {1, 10}, 10);
        OdeOutcome again = new OdeDriver(stiff, integrator, new Tolerances(1e-6, 1e-6)).run(0, new double[] {0}, 7);
        assertThat(again.state()).isEqualTo(first.state());
        assertThat(again.statistics()).isEqualTo(first.statistics());
    }

    @Test
    void refusesASenselessSpan() {
        OdeDriver driver = new OdeDriver(FALL, new StabilizedExplicit(), new Tolerances(1e-6, 1e-6, 1e-6));
        assertThatThrownBy(() -> driver.run(1, new double[2], 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> driver.run(0, new double[3], 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
