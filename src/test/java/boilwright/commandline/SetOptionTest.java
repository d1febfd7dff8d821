package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Asked;
import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Margin;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.Stored;
import boilwright.answers.VacuumQuestion;
import boilwright.answers.WarmupQuestion;
import boilwright.answers.WaterQuestion;
import boilwright.choice.CompareQuestion;
import boilwright.choice.FluidsQuestion;
import boilwright.choice.SizeQuestion;
import boilwright.drill.DrillQuestion;
import boilwright.errors.CancelledException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import boilwright.sequence.PlanQuestion;
import boilwright.spread.SpreadQuestion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Fields of a rig that get another value on the command line. */
class SetOptionTest {
    private static final String DEMO = "demo:mirror-club";
    private static final Rig CLUB = RigReader.readDemo("mirror-club", Stored.FLUIDS.workingFluids(), Set.of());

    @TempDir
    private Path folder;

    /** Remembers which rigs it is asked about and answers nothing. */
    private static final class Listening implements Model {
        private final List<Rig> rigs = new ArrayList<>();

        @Override
        public <A> A answer(Question<A> question, CancelToken cancel, ProgressSink progress) {
            rigs.add(asked(question).rig());
            throw new CancelledException();
        }

        private static Asked asked(Question<?> question) {
            if (question instanceof CheckQuestion check) {
                return check.asked();
            } else if (question instanceof WarmupQuestion warmup) {
                return warmup.asked();
            } else if (question instanceof CooldownQuestion cooldown) {
                return cooldown.asked();
            } else if (question instanceof WaterQuestion water) {
                return water.asked();
            } else if (question instanceof VacuumQuestion vacuum) {
                return vacuum.asked();
            } else if (question instanceof SizeQuestion size) {
                return size.asked();
            } else if (question instanceof CompareQuestion compare) {
                return compare.asked();
            } else if (question instanceof FluidsQuestion fluids) {
                return fluids.asked();
            } else if (question instanceof DrillQuestion drill) {
                return drill.asked();
            } else if (question instanceof PlanQuestion plan) {
                return plan.asked();
            }
            return ((SpreadQuestion) question).asked();
        }
    }

    private Rig asked(String... line) {
        Listening model = new Listening();
        CommandRun run = CommandRun.of(folder, model, new CancelToken(), line);
        assertThat(model.rigs).as(run.err()).hasSize(1);
        return model.rigs.get(0);
    }

    private String refused(String... line) {
        StoredModel model = StoredModel.with(Margin.Status.HOLDS);
        CommandRun run = CommandRun.of(folder, model, new CancelToken(), line);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(model.asked()).as("questions").isZero();
        return run.err();
    }

    @Test
    void everyCommandThatTakesARigHasIt() {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream());
        Terminal terminal = new Terminal(nowhere, nowhere, folder, false, new CancelToken());
        int found = 0;
        for (CommandLine command : Boilwright.commands(terminal, Model.COMPUTING, new RecordedWindow())
                .getSubcommands()
                .values()) {
            CommandSpec spec = command.getCommandSpec();
            boolean rig = spec.args().stream().anyMatch(arg -> arg.paramLabel().equals("RIG"));
            assertThat(spec.optionsMap().containsKey("--set")).as(spec.name()).isEqualTo(rig);
            found += rig ? 1 : 0;
        }
        assertThat(found).isGreaterThanOrEqualTo(12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "warmup",
                "cooldown",
                "water",
                "size",
                "compare",
                "vacuum",
                "drill --all",
                "plan",
                "spread --runs 20",
                "fluids --for"
            })
    void everyQuestionIsAboutTheEditedRig(String command) {
        List<String> line = new ArrayList<>(List.of(command.split(" ")));
        line.addAll(List.of(DEMO, "--set", "heatSource.ratedPower=2.1 kW", "--set", "stages[1].throatGap = 0.9 mm"));
        Rig rig = asked(line.toArray(String[]::new));
        assertThat(rig.heatSource().ratedPowerW()).isEqualTo(2100);
        assertThat(rig.stages().get(1).throatGapM()).isEqualTo(0.9e-3);
        assertThat(rig.withHeatSource(CLUB.heatSource()).stages().get(0))
                .isEqualTo(CLUB.stages().get(0));
    }

    @Test
    void choicesTextsListsAndFieldsThatTheFileLeavesOutCanBeSet() {
        Rig rig = asked(
                "check",
                DEMO,
                "--set=name=Another club",
                "--set=fluid=705-type",
                "--set=limits.heatMargin=1.5",
                "--set=boiler.emissivity=0.5");
        assertThat(rig.name()).isEqualTo("Another club");
        assertThat(rig.fluidId()).isEqualTo("705-type");
        assertThat(rig.limits().heatMargin()).hasValue(1.5);
        assertThat(rig.boiler().emissivity()).isEqualTo(0.5);
    }

    @Test
    void theWindowOpensWithTheEditedRigAsAnEditOfItsFile() throws IOException {
        Path file = Files.writeString(folder.resolve("club.json"), RigWriter.write(CLUB));
        RecordedWindow window = new RecordedWindow();
        CommandRun run = CommandRun.of(
                folder,
                StoredModel.with(Margin.Status.HOLDS),
                window,
                new CancelToken(),
                "dashboard",
                file.toString(),
                "--set",
                "charge=120 mL");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(window.shown().get(0).rig()).isEqualTo(CLUB);
        assertThat(window.shown().get(0).edited()).isEqualTo(CLUB.withCharge(CLUB.fluidId(), 120e-6));
    }

    @Test
    void aGuessThatIsSetIsNoGuessAnyMore() throws IOException {
        Rig guessed = CLUB.withGuesses(Set.of("charge", "room.temperature"));
        Path file = Files.writeString(folder.resolve("guessed.json"), RigWriter.write(guessed));
        assertThat(asked("check", file.toString(), "--set", "charge=100 mL").guesses())
                .containsExactly("room.temperature");
        assertThat(Files.readString(file)).isEqualTo(RigWriter.write(guessed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heatSource.ratedPowr=750 W|--set heatSource.ratedPowr: heatSource.ratedPowr is not a known field. Did you mean ratedPower?",
                "heatsource.ratedPower=750 W|--set heatsource.ratedPower: heatsource is not a known field. Did you mean heatSource?",
                "stages[9].throatGap=1 mm|--set stages[9].throatGap: stages has",
                "stages.throatGap=1 mm|--set stages.throatGap: stages has",
                "heatSource[0].ratedPower=1 kW|is no list",
                "heatSource.ratedPower=750 mm|--set heatSource.ratedPower: heatSource.ratedPower",
                "heatSource.ratedPower=750|--set heatSource.ratedPower: heatSource.ratedPower",
                "heatSource.ratedPower=-750 W|--set heatSource.ratedPower: heatSource.ratedPower",
                "heatSource.ratedPower=9 GW|--set heatSource.ratedPower: heatSource.ratedPower",
                "body.material=borosilicat|--set body.material: body.material",
                "stages[0].height=10 m|--set stages[0].height: stages[0].height",
                "heatSource.ratedPower 750 W|--set heatSource.ratedPower 750 W is not understood",
                "=750 W|--set =750 W is not understood",
                "fluid=nothing|--set fluid: fluid",
                "format=3|--set format",
                "boiler=small|--set boiler: boiler"
            })
    void whatAFileWouldBeRefusedForIsRefusedWithTheOptionsName(String edit, String words) {
        assertThat(refused("check", DEMO, "--set", edit)).contains(words);
    }

    @Test
    void theSamePathTwiceIsRefused() {
        assertThat(refused("check", DEMO, "--set", "charge=90 mL", "--set", "charge=100 mL"))
                .contains("--set charge is given twice", "\"90 mL\"", "\"100 mL\"");
    }

    @Test
    void aRigThatContradictsItselfNamesTheEditsThatLedThere() {
        assertThat(refused(
                        "check",
                        DEMO,
                        "--set",
                        "stages[0].height=" + 1e3 * CLUB.stages().get(1).heightM() + " mm"))
                .contains("--set stages[0].height: stages[");
    }

    @Test
    void allFaultsAreToldTogether() {
        assertThat(refused("check", DEMO, "--set", "charge=90 m", "--set", "boiler.emissivity=7")
                        .lines())
                .hasSize(2);
    }

    @Test
    void aFaultyFileIsToldAsItIs() throws IOException {
        String text = RigWriter.write(CLUB).replace("\"charge\"", "\"chrage\"");
        Path file = Files.writeString(folder.resolve("faulty.json"), text);
        assertThat(refused("check", file.toString(), "--set", "charge=90 mL"))
                .contains("faulty.json, line ", "chrage")
                .doesNotContain("--set");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"heatSource.ratedPower=2400 kW", "room.pressure=10e4 Pa"})
    void aLikelySlipIsRefusedUnlessItIsAccepted(String edit) {
        String path = edit.substring(0, edit.indexOf('='));
        assertThat(refused("check", DEMO, "--set", edit)).contains("--set " + path + ": ", "--accept " + path);
        assertThat(asked("check", DEMO, "--set", edit, "--accept", path)).isNotEqualTo(CLUB);
    }

    @Test
    void withoutARigThereIsNothingToSet() {
        assertThat(refused("fluids", "--set", "charge=90 mL")).contains("--set is for fields of a rig");
    }
}
