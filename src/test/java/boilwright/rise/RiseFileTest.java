package boilwright.rise;

import static boilwright.errors.Said.said;
import static boilwright.errors.Said.saidThere;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RiseFileTest {
    private static final String GOOD = "0,1\n60,1.2\n120,1.4\n180,1.6\n240,1.8\n";

    @TempDir
    Path folder;

    private static RiseRecord read(String text, String... accepted) {
        return RiseFile.readText("run.csv", text, Set.of(accepted));
    }

    private static List<String> faults(String text, String... accepted) {
        try {
            RiseRecord record = read(text, accepted);
            throw new AssertionError("accepted: " + record);
        } catch (InputRefusedException refusal) {
            return refusal.faults().stream().map(Message::text).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time_s,pressure_Pa",
                "t [s],p [Pa]",
                "Time (s),Pressure (Pa)",
                "t/s,p/Pa",
                "elapsed / s , P / Pa",
                "\"t [s]\",\"p [Pa]\""
            })
    void readsEveryFormOfAName(String header) {
        RiseRecord record = read(header + "\n" + GOOD);
        assertThat(record.readings()).hasSize(5).contains(new RiseRecord.Reading(60, 1.2));
        assertThat(record.spanS()).isEqualTo(240);
        assertThat(record.pressureUnit()).hasToString("Pa");
    }

    @Test
    void convertsUnits() {
        RiseRecord record = read("t_min,p_mTorr\n0,10\n1,20\n2,30\n3,40\n4,5e1\n");
        assertThat(record.spanS()).isEqualTo(240);
        assertThat(record.readings().get(4).pressurePa()).isCloseTo(0.05 * 101325 / 760, within(1e-12));
    }

    @Test
    void passesOverCommentsEmptyLinesOtherColumnsAndLineEnds() {
        String text =
                "\n# closed at 14:02\r\nnote;t [s];p [Pa]\r\n\r\nvalve;0;1\r\n#;60;9\r\n;60;1.2\r\n;120;1.4\r\n;180;1.6\r\n"
                        + "last;240;1.8";
        assertThat(read(text).readings()).hasSize(5).contains(new RiseRecord.Reading(240, 1.8));
        assertThat(read("t_s\tp_Pa\n" + GOOD.replace(',', '\t')).readings()).hasSize(5);
    }

    @Test
    void readsAByteOrderMark() throws IOException {
        Path file = folder.resolve("run.csv");
        Files.writeString(file, "\uFEFFtime_s,pressure_Pa\n" + GOOD);
        assertThat(RiseFile.read(file, Set.of()).readings()).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "60,`` | nothing is written here",
                "60,   | nothing is written here",
                "60,low | \"low\" is not a number",
                "60,0 | the pressure is 0 Pa; accepted is anything above zero",
                "60,-1.2 | the pressure is -1.2 Pa",
                "60,12e | \"12e Pa\"",
                "60,1e999 | too large or too small",
                "60,NaN | \"NaN\" is not a number",
                "60,1.2 Pa | has a unit of its own",
                "60,10e-1 | was probably meant as 1e-1; write the one you mean. If it is meant as it is written, go on with --accept pressure",
                "60,1 200 | has a blank inside its number. Was 1200 meant?",
                "60,1.2x10^-3 | write 1.2e-3 instead",
            })
    void refusesACellNamingLineAndColumn(String row, String said) {
        assertThat(faults("t_s,p_Pa\n0,1\n" + row.replace("`", "") + "\n120,1.4\n180,1.6\n240,1.8\n250,1.9\n"))
                .singleElement()
                .asString()
                .startsWith("run.csv, line 3, column \"p_Pa\": ")
                .contains(said);
    }

    @Test
    void refusesDecimalCommas() {
        assertThat(faults("t_s;p_Pa\n0;1\n60;1,2\n120;1,234\n180;2\n240;3\n"))
                .containsExactly(
                        said(
                                MessageKey.RISE_CELL_REFUSED,
                                "run.csv, line 3, column \"p_Pa\"",
                                "\"1,2 Pa\" has a comma in its number; the decimal sign is a point and thousands are not parted. Was 1.2 meant?"),
                        said(
                                MessageKey.RISE_CELL_REFUSED,
                                "run.csv, line 4, column \"p_Pa\"",
                                "\"1,234 Pa\" has a comma in its number, which could mean 1.234 or 1234; write the one you mean."));
        assertThat(faults("t_s,p_Pa\n0,1\n60,1,2\n120,1.4\n180,2\n240,3\n"))
                .singleElement()
                .asString()
                .startsWith("run.csv, line 3: there are 3 cells for 2 columns. If decimal commas part them");
    }

    @ParameterizedTest
    @CsvSource({"60, 60 s", "30, 30 s"})
    void refusesTimeThatStandsOrGoesBack(String second, String shown) {
        assertThat(faults("t_s,p_Pa\n60,1\n" + second + ",1.2\n120,1.4\n180,1.6\n240,1.8\n300,2\n"))
                .singleElement()
                .asString()
                .isEqualTo("run.csv, line 3, column \"t_s\": the time is " + shown
                        + ", not after 60 s on the line before. Every reading is later than the last; a second record belongs"
                        + " into a file of its own.");
    }

    @Test
    void refusesTimesOfDay() {
        assertThat(faults("t_s,p_Pa\n14:02:00,1\n60,1.2\n120,1.4\n180,1.6\n240,1.8\n"))
                .singleElement()
                .asString()
                .contains("line 2, column \"t_s\": \"14:02:00\" is a time of day");
    }

    @Test
    void refusesNamesWithTheLikelyMeaning() {
        assertThat(faults("zeit_s,p_Pa\n" + GOOD))
                .singleElement()
                .asString()
                .contains("line 1: there is no column of the time", "Found: \"zeit_s\", \"p_Pa\"");
        assertThat(faults("# names\n\ntime,p_Pa\n" + GOOD).get(0))
                .contains("line 3: the column \"time\" has no unit in its name. Write it such as time_s");
        assertThat(faults("t_sec,p_mtorr\n" + GOOD))
                .satisfiesExactly(
                        time -> assertThat(time).contains("\"sec\" is not a known unit", "\"s\""),
                        pressure -> assertThat(pressure).contains("\"mtorr\" is not a known unit", "\"mTorr\""));
        assertThat(faults("t_s,p [L/min]\n" + GOOD).get(0)).contains("volume flow; a pressure is wanted");
        assertThat(faults("t_s,p_Pa,pressure_mbar\n" + GOOD).get(0)).contains("two columns of the pressure");
        assertThat(faults(GOOD).get(0)).contains("line 1: there are numbers where the names");
    }

    @Test
    void asksAboutUnitsThatLookLikeSlips() {
        String torr = "t_min,p_Torr\n0,50\n1,60\n2,70\n3,80\n4,90\n";
        assertThat(faults(torr))
                .containsExactly(said(
                        MessageKey.RISE_PRESSURE_SLIP,
                        "run.csv",
                        "\"p_Torr\"",
                        "50 Torr",
                        "50 mTorr",
                        "1.00e-6 Pa to 300 Pa"));
        assertThat(read(torr, "pressure").readings().get(0).pressurePa()).isCloseTo(50 * 101325 / 760.0, within(1e-9));
        assertThat(faults("t_min,p_mTorr\n0,5e-6\n1,6e-6\n2,7e-6\n3,8e-6\n4,9e-6\n")
                        .get(0))
                .contains("was 5e-6 Torr meant?");
        String seconds = "t_s,p_Pa\n0,1\n1,1.2\n2,1.4\n3,1.6\n4,1.8\n";
        assertThat(faults(seconds).get(0)).contains("the record is 4 s long: was 4 min meant?", "--accept time");
        assertThat(read(seconds, "time").spanS()).isEqualTo(4);
    }

    @Test
    void anAcceptedSlipOfTheExponentIsTakenAsItIsWritten() {
        String text = "t_s,p_Pa\n0,1\n60,10e-1\n120,1.4\n180,1.6\n240,1.8\n";
        assertThat(read(text, "pressure").readings().get(1).pressurePa()).isEqualTo(1);
        assertThat(faults(text, "time")).hasSize(1);
    }

    @Test
    void refusesPressuresAboveTheAirEvenWhenAccepted() {
        assertThat(faults("t_s,p_kPa\n0,50\n60,80\n120,100\n180,120\n240,140\n", "pressure"))
                .singleElement()
                .asString()
                .contains("a pressure is 120 kPa, above that of the air");
    }

    @Test
    void refusesTooFewAndTooManyReadings() {
        assertThat(faults("t_s,p_Pa\n0,1\n60,1.2\n120,1.4\n180,1.6\n").get(0)).contains("has 4 readings");
        assertThat(faults("t_s,p_Pa\n").get(0)).contains("has 0 readings");
        String many = IntStream.rangeClosed(0, RiseFile.MOST)
                .mapToObj(i -> i + ",1")
                .collect(Collectors.joining("\n", "t_s,p_Pa\n", "\n"));
        assertThat(faults(many).get(0)).contains("more than 10000 readings");
    }

    @Test
    void tellsTheFirstFaultsAndCountsTheOthers() {
        String text = "t_s,p_Pa\n" + "0,low\n".repeat(25);
        assertThat(faults(text)).hasSize(11).last().isEqualTo(said(MessageKey.RISE_MORE_FAULTS, "run.csv", "15"));
    }

    @Test
    void refusesAQuotationMarkThatIsNotClosed() {
        assertThat(faults("t_s,p_Pa\n0,\"1\n60,1.2\n").get(0)).contains("inside quotation marks");
    }

    @Test
    void refusesWhatIsNoTextFile() throws IOException {
        Path file = folder.resolve("run.csv");
        assertThat(refusal(file)).endsWith("run.csv: the file cannot be read: it does not exist.");
        assertThat(refusal(folder)).endsWith(": the file cannot be read: it is a folder.");
        for (String empty : List.of("", " \n\n", "# only words\n")) {
            Files.writeString(file, empty);
            assertThat(refusal(file)).endsWith(saidThere(MessageKey.RISE_FILE_EMPTY));
        }
        Files.write(file, new byte[] {'t', 0, 1});
        assertThat(refusal(file)).contains("not a text file: byte 2 is zero");
        Files.write(file, "t_s,p_Pa".getBytes(StandardCharsets.UTF_16));
        assertThat(refusal(file)).contains("UTF-16");
        Files.write(file, new byte[] {'t', (byte) 0xB5, '\n'});
        assertThat(refusal(file)).contains("it is not UTF-8");
        Files.write(file, new byte[RecordText.LARGEST + 1]);
        assertThat(refusal(file)).contains("too large; a record has at most 4 MB");
    }

    private static String refusal(Path file) {
        try {
            return "accepted: " + RiseFile.read(file, Set.of());
        } catch (InputRefusedException refused) {
            return refused.faults().get(0).text();
        }
    }

    @Test
    void refusesWordsThatNameNoQuantity() {
        assertThatExceptionOfType(InputRefusedException.class)
                .isThrownBy(() -> Quantity.checkAccepted(List.of("presure")))
                .withMessageContaining("Accepted: time, pressure, volume");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "30 | \"30\" has no unit",
                "30 L/min | is a volume flow; a volume is wanted",
                "30 m3 | --volume: it is 30 m3: was 30 L meant?",
                "0.02 L | was 0.02 m3 meant?",
                "10e-3 m3 | probably meant as 1e-3; write the one you mean. If it is meant as it is written",
                "0 L | --volume: it is 0 L; accepted is 1 mL to 10000 m3",
                "-3 L | accepted is 1 mL",
                "30,5 L | Was 30.5 meant?"
            })
    void refusesVolumes(String text, String said) {
        assertThatExceptionOfType(InputRefusedException.class)
                .isThrownBy(() -> RiseVolume.read(text, Set.of()))
                .withMessageContaining(said);
    }

    @Test
    void readsVolumes() {
        assertThat(RiseVolume.read("30 L", Set.of())).isCloseTo(0.03, within(1e-15));
        assertThat(RiseVolume.read("30 m3", Set.of("volume"))).isEqualTo(30);
        assertThat(RiseVolume.read("10e-3 m3", Set.of("volume"))).isEqualTo(0.01);
    }
}
