package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Margin;
import boilwright.answers.Model;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.invariants.RandomRigs.Drawn;
import boilwright.invariants.RandomRigs.Mode;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ForelineKind;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.SupplyKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * What the check makes of rigs of all three modes: an answer, or a refusal for a reason that has a key. Prints the shares and
 * writes them to {@code target/outcomes-of-random-rigs.txt}.
 */
class OutcomesOfRandomRigsTest {
    private static final long SEED = 20261201;
    /** Every fluid, source and supply; just short of the one whose limits take seconds to find, mercury's. */
    private static final int USUAL = 20;

    private static final int DEEP = 3000;
    /** Steps after which a warm-up is left alone; a thermostat or chiller that switches for hours takes thousands. */
    private static final int MOST_STEPS = Counts.of(600, 10_000);

    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private final Map<Mode, Map<String, Integer>> shares = new EnumMap<>(Mode.class);
    private final Map<Mode, Integer> counts = new EnumMap<>(Mode.class);
    private final Set<Object> seen = new HashSet<>();
    private final List<String> faults = new ArrayList<>();
    private int refused;
    private int unmoved;

    @Test
    void everyRigIsAnsweredOrRefusedForAReason() throws IOException {
        int count = Counts.of(USUAL, Integer.getInteger("boilwright.rigs", DEEP));
        long from = System.nanoTime();
        for (int index = 0; index < count; index++) {
            look(index);
        }
        String report = report(count, (System.nanoTime() - from) * 1e-9);
        System.out.println(report);
        Files.writeString(Path.of("target", "outcomes-of-random-rigs.txt"), report);
        assertThat(faults).isEmpty();
        assertThat(seen)
                .containsAll(RandomRigs.FLUIDS)
                .contains((Object[]) SourceKind.values())
                .contains((Object[]) SupplyKind.values())
                .contains((Object[]) ForelineKind.values())
                .contains("glass", "metal", "chamber", "protection", "branches");
        for (Mode mode : Mode.values()) {
            assertThat(share(mode, "answered")).as(mode + " answered").isGreaterThan(0.5);
        }
        assertThat(share(Mode.NEAR_A_LIMIT, "the margin brought near 1 fails")).isBetween(0.1, 0.9);
        assertThat(share(Mode.NEAR_A_LIMIT, "a margin within 10 % of its limit"))
                .isGreaterThan(0.8);
        assertThat(unmoved).as("rigs that nothing could be done to").isLessThanOrEqualTo(count / 10);
    }

    private void look(int index) {
        Drawn drawn = RandomRigs.of(SEED, index);
        refused += drawn.refused();
        unmoved += drawn.mode() != Mode.PLAUSIBLE && drawn.told().isEmpty() ? 1 : 0;
        counts.merge(drawn.mode(), 1, Integer::sum);
        features(drawn.rig());
        CancelToken cancel = new CancelToken();
        int[] steps = new int[1];
        ProgressSink counting = (share, phase) -> {
            if (++steps[0] > MOST_STEPS) {
                cancel.cancel();
            }
        };
        try {
            CheckAnswer check =
                    Model.COMPUTING.answer(new CheckQuestion(Asked.of(drawn.rig(), FLUIDS)), cancel, counting);
            count(drawn.mode(), "answered");
            margins(drawn, check.margins());
        } catch (ComputationException e) {
            count(drawn.mode(), "refused: " + e.reason().key());
            if (e.reason().key() == MessageKey.ENERGY_NOT_CLOSED && drawn.mode() == Mode.PLAUSIBLE) {
                faults.add("rig " + index + ": " + e.getMessage());
            }
        } catch (CancelledException e) {
            count(drawn.mode(), "left after " + MOST_STEPS + " steps");
        } catch (RuntimeException e) {
            count(drawn.mode(), "fault: " + e.getClass().getSimpleName());
            faults.add("rig " + index + " (" + drawn.mode() + " " + drawn.told() + "): " + e);
        }
    }

    private void margins(Drawn drawn, List<Margin> margins) {
        Mode mode = drawn.mode();
        boolean any = false;
        boolean near = false;
        for (Margin margin : margins) {
            boolean fails = margin.status() == Margin.Status.FAILS;
            any |= fails;
            near |= margin.ratio().isPresent() && Math.abs(margin.ratio().getAsDouble() - 1) < 0.1;
            if (fails) {
                count(mode, "fails: " + margin.id());
                if (drawn.margin().equals(margin.id().toString())) {
                    count(mode, "the margin brought near 1 fails");
                }
            }
        }
        if (any) {
            count(mode, "some margin fails");
        }
        if (near) {
            count(mode, "a margin within 10 % of its limit");
        }
    }

    private void features(Rig rig) {
        seen.add(rig.fluidId());
        seen.add(rig.heatSource().kind());
        seen.add(rig.cooling().supply().kind());
        seen.add(rig.foreline().kind());
        seen.add(rig.body().material().isGlass() ? "glass" : "metal");
        rig.vacuum().ifPresent(side -> seen.add("chamber"));
        if (!rig.protection().trips().isEmpty()) {
            seen.add("protection");
        }
        if (rig.cooling().elements().stream().anyMatch(e -> !e.place().branch().isEmpty())) {
            seen.add("branches");
        }
    }

    private void count(Mode mode, String what) {
        shares.computeIfAbsent(mode, m -> new TreeMap<>()).merge(what, 1, Integer::sum);
    }

    private double share(Mode mode, String what) {
        return shares.get(mode).getOrDefault(what, 0) / (double) counts.get(mode);
    }

    private String report(int count, double seconds) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%d random rigs of seed %d in %.0f s; %d rigs or figures drawn anew because the reader refused them%n",
                count,
                SEED,
                seconds,
                refused));
        shares.forEach((mode, found) -> found.forEach((what, n) ->
                text.append(String.format(Locale.ROOT, "%-13s %5.1f %%  %s%n", mode, 100 * share(mode, what), what))));
        faults.forEach(fault -> text.append(fault).append('\n'));
        return text.toString();
    }
}
