package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.Line;

/**
 * Opens the window on the display of its environment as the program does, and has a robot at the keyboard and the mouse go through two
 * jobs: one to its paper, one that STOP ends. Ends with 0 when both went as they should.
 */
final class RealWindowProgram {
    private static final double PACE = 10;

    private RealWindowProgram() {}

    /** @param words folder of records, and one for pictures */
    public static void main(String[] words) throws Exception {
        Path folder = Path.of(words[0]);
        Picture.into(Path.of(words[1]));
        CompletableFuture<Void> robot = CompletableFuture.runAsync(RealWindowProgram::goThroughIt);
        BenchServices services = JourneyTest.services(
                folder.resolve("records"), folder.resolve("spare"), Optional.empty(), RealWindowProgram::line);
        BenchLauncher.show(
                JourneyTest.settings("port", BenchKeys.USUAL),
                services,
                services.shelf().stand("serial"),
                System.getenv());
        robot.get();
        System.exit(0);
    }

    private static Line line(String port, int baud) {
        var plant = PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant();
        return new SimulatedLine(
                new SimulatedBoard(plant, TestStands.described("serial").channels()), PACE);
    }

    private static void goThroughIt() {
        try {
            Hands hands = new Hands(Hands.onlyWindow(), Hands.look(RobotKeyboard::new));
            JobByKeys job = new JobByKeys(hands);
            job.whole("SN-1");
            picture(hands, "real-verdict");
            hands.act(KeyCode.F2);
            hands.goTo(Moment.HISTORY);
            hands.awaitWords("SN-1");
            job.upToTheRun("SN-2");
            job.awaitMeasuring();
            picture(hands, "real-run");
            mouseOn(hands, "stop");
            hands.await("the question why", job::asksWhy);
            hands.press(KeyCode.F1);
            job.awaitEnd();
            picture(hands, "real-stopped");
            close(hands);
        } catch (Exception | AssertionError e) {
            // Where it stands is seen by the picture; the other end hears of the rest.
            e.printStackTrace();
            System.exit(1);
        }
    }

    private static void picture(Hands hands, String name) throws Exception {
        Hands.look(() -> Picture.take(hands.scene(), name));
    }

    private static void mouseOn(Hands hands, String id) throws Exception {
        Hands.look(() -> {
            Node node = hands.scene().lookup("#" + id);
            Point2D middle = node.localToScreen(
                    node.getBoundsInLocal().getCenterX(),
                    node.getBoundsInLocal().getCenterY());
            Robot robot = new Robot();
            robot.mouseMove(middle);
            robot.mouseClick(MouseButton.PRIMARY);
            return true;
        });
    }

    private static void close(Hands hands) throws Exception {
        Hands.look(() -> {
            hands.scene().getWindow().hide();
            return true;
        });
    }

    /** The command that runs this with the class path and settings of the process that asks. */
    static List<String> command(Path folder, Path pictures) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Duser.language=de",
                "-Duser.country=DE",
                "-Dprism.order=sw",
                "-Dpumpwright.root=" + System.getProperty("pumpwright.root"),
                "-cp",
                System.getProperty("java.class.path"),
                RealWindowProgram.class.getName(),
                folder.toString(),
                pictures.toString());
    }
}
