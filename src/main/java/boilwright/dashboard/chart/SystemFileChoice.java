package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.stage.FileChooser;

/** The system's own dialogue; it begins in the folder where it ended last. */
final class SystemFileChoice implements FileChoice {
    private final Node owner;
    private File folder;

    SystemFileChoice(Node owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> fileFor(String suggestedName, ChartFormat format) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(WindowText.say("chart.export.title"));
        chooser.setInitialFileName(suggestedName);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(format.title(), "*." + format.ending()));
        if (folder != null && folder.isDirectory()) {
            chooser.setInitialDirectory(folder);
        }
        File file = chooser.showSaveDialog(owner.getScene().getWindow());
        if (file == null) {
            return Optional.empty();
        }
        folder = file.getParentFile();
        return Optional.of(file.toPath());
    }
}
