package boilwright.dashboard;

import boilwright.dashboard.text.WindowText;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The system's own file dialogues; each begins in the folder where the last one ended. */
final class SystemDialogues implements FileAsker {
    private final Stage owner;
    private File folder;

    SystemDialogues(Stage owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> fileToOpen() {
        return taken(chooser("frame.files.open", "frame.files.rigs").showOpenDialog(owner));
    }

    @Override
    public Optional<Path> fluidToOpen() {
        return taken(chooser("frame.files.fluid", "frame.files.fluids").showOpenDialog(owner));
    }

    @Override
    public Optional<Path> recordToOpen() {
        return taken(chooser("frame.files.record", "frame.files.records", "*.csv", "*.txt")
                .showOpenDialog(owner));
    }

    @Override
    public Optional<Path> sheetToSave(String suggestedName) {
        FileChooser chooser = chooser("frame.files.sheet", "frame.files.sheets", "*.pdf");
        chooser.setInitialFileName(suggestedName);
        return taken(chooser.showSaveDialog(owner));
    }

    @Override
    public Optional<Path> fileToSave(String suggestedName) {
        FileChooser chooser = chooser("frame.files.save", "frame.files.rigs");
        chooser.setInitialFileName(suggestedName);
        return taken(chooser.showSaveDialog(owner));
    }

    private FileChooser chooser(String title, String what) {
        return chooser(title, what, "*.json");
    }

    private FileChooser chooser(String title, String what, String... endings) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(WindowText.say(title));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(WindowText.say(what), endings));
        if (folder != null && folder.isDirectory()) {
            chooser.setInitialDirectory(folder);
        }
        return chooser;
    }

    private Optional<Path> taken(File file) {
        if (file == null) {
            return Optional.empty();
        }
        folder = file.getParentFile();
        return Optional.of(file.toPath());
    }
}
