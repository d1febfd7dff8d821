package boilwright.dashboard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;
import org.testfx.robot.KeyboardRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The usual robot, but waiting once for keys that are pushed together, not after every way down and up. */
public final class Keyboard extends FxRobot {
    @Override
    public FxRobot push(KeyCode... together) {
        KeyboardRobot keys = robotContext().getKeyboardRobot();
        keys.pressNoWait(together);
        List<KeyCode> back = new ArrayList<>(Arrays.asList(together));
        Collections.reverse(back);
        keys.releaseNoWait(back.toArray(new KeyCode[0]));
        WaitForAsyncUtils.waitForFxEvents(2);
        return this;
    }
}
