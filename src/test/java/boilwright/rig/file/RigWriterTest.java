package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Boiler;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigWriterTest {
    @TempDir
    Path folder;

    private static Rig demo(String name) {
        return RigReader.readDemo(name, Texts.FLUIDS, Set.of());
    }

    private static Rig sample(String name) {
        return Texts.read(Texts.sample(name));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"neon-workshop", "mirror-club", "teaching-lab"})
    void whatWasWrittenReadsBackEqualAndWritesTheSameAgain(String name) {
        String text = RigWriter.write(demo(name));
        Rig again = Texts.read(text);
        assertThat(again).isEqualTo(demo(name));
        assertThat(RigWriter.write(again)).isEqualTo(text);
    }

    @Test
    void quantitiesAreWrittenAsPeopleWriteThem() {
        assertThat(RigWriter.write(sample("glass-on-plate")))
                .contains(
                        "\"charge\": \"100 mL\"",
                        "\"innerDiameter\": \"120 mm\"",
                        "\"ratedPower\": \"1500 W\"",
                        "\"pressure\": \"40 mTorr\"",
                        "\"flow\": \"1 L/min\"",
                        "\"temperature\": \"22 degC\"",
                        "\"emissivity\": 0.9",
                        "\"power\": \"100 %\"")
                .endsWith("}\n");
    }

    @Test
    void whatWasLeftOutIsWrittenOut() {
        Boiler boiler = sample("glass-on-plate").boiler();
        assertThat(boiler.wettedAreaM2()).isEqualTo(boiler.heatedAreaM2());
        assertThat(boiler.outsideAreaM2()).isEqualTo(0.02478);
        assertThat(boiler.emissivity()).isEqualTo(0.9);
        assertThat(boiler.insulationConductivity()).isEqualTo(0.05);
        Rig metal = sample("metal-clamped");
        assertThat(metal.boiler().wettedAreaM2()).isEqualTo(0.0285);
        assertThat(metal.room().pressurePa()).isEqualTo(101_325);
        assertThat(metal.limits()).isEqualTo(Limits.USUAL);
        assertThat(RigWriter.write(sample("glass-on-plate"))).contains("\"outsideArea\": \"247.8 cm2\"");
        String noSchedule = Texts.sample("glass-in-mantle").replaceFirst("(?s)\"schedule\": \\[.*?],", "");
        assertThat(Texts.read(noSchedule).schedule().steps()).containsExactly(new Schedule.Power(0, 1));
    }

    @Test
    void theLanguageOfTheMachineChangesNothing() {
        String english = RigWriter.write(sample("metal-clamped"));
        List<String> refusals = Texts.faults(Texts.changed("metal-clamped", "\"450 mL\"", "\"4500 L\""));
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-SA-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(RigWriter.write(sample("metal-clamped"))).isEqualTo(english);
                assertThat(Texts.faults(Texts.changed("metal-clamped", "\"450 mL\"", "\"4500 L\"")))
                        .isEqualTo(refusals);
                assertThat(RigSchema.text()).contains("Accepted: 0.5 mL to 200000 mL.");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void savingReplacesTheOldFileAndLeavesNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("pump.json"), "old");
        RigWriter.save(sample("glass-in-mantle"), file);
        assertThat(Files.readString(file, StandardCharsets.UTF_8))
                .isEqualTo(RigWriter.write(sample("glass-in-mantle")));
        assertThat(names()).containsExactly("pump.json");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void savingThroughALinkKeepsTheLink() throws IOException {
        Path file = Files.writeString(folder.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        RigWriter.save(sample("glass-in-mantle"), link);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.readString(file)).isEqualTo(RigWriter.write(sample("glass-in-mantle")));
    }

    @Test
    void whatCannotBeSavedIsRefusedInWords() throws IOException {
        Path file = folder.resolve("none").resolve("pump.json");
        assertThatThrownBy(() -> RigWriter.save(sample("glass-in-mantle"), file))
                .isInstanceOf(InputRefusedException.class)
                .hasMessage(file + ": the rig cannot be written: its folder does not exist. Nothing there was"
                        + " changed.");
        assertThatThrownBy(() -> RigWriter.save(sample("glass-in-mantle"), folder))
                .hasMessage(folder + ": the rig cannot be written: it is a folder. Nothing there was changed.");
        assertThat(names()).isEmpty();
    }
}
