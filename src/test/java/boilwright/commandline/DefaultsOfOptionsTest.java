package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.TypicalValues;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What an option holds unless it is given is the typical value that the window takes, and its help says it. */
class DefaultsOfOptionsTest {
    static Arguments[] options() {
        return new Arguments[] {
            Arguments.of(new CompareCommand(null, null), "--room-volume", Dimension.VOLUME, TypicalValues.WORKROOM_M3),
            Arguments.of(
                    new CompareCommand(null, null),
                    "--air-changes",
                    Dimension.FRACTION,
                    TypicalValues.AIR_CHANGES_PER_H),
            Arguments.of(new VacuumCommand(null, null), "--after", Dimension.TIME, TypicalValues.PUMPED_S),
        };
    }

    @ParameterizedTest
    @MethodSource("options")
    void theDefaultIsTheTypicalValue(Object command, String name, Dimension dimension, double typical) {
        OptionSpec option = new CommandLine(command).getCommandSpec().findOption(name);
        assertThat(option).as(name).isNotNull();
        String text = option.defaultValue();
        assertThat(((Reading.Read) QuantityReader.read(text, dimension)).si()).isEqualTo(typical);
        assertThat(Arrays.toString(option.description())).contains(text + " unless given");
    }
}
