package takeup.demo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntBiFunction;
import takeup.console.Console;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.journal.Archive;
import takeup.review.Review;
import takeup.reviewing.OpenedScans;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.scanview.ScanKeys;
import takeup.scanview.ScansState;
import takeup.scanview.ScansView;

/** What the tour shows that is no view of the screen: scans, drawn behind the first pictures, and what they taught. */
public final class DemoExhibits implements Tour.Exhibits {
    private static final RollId ROLL = RollId.parse("R0001").orElseThrow();

    private final Path folder;
    private final ToIntBiFunction<String[], Console> commands;
    private final Thread painter = new Thread(this::paint, "scans of the demo");
    private volatile Optional<Shown> shown = Optional.empty();
    private List<String> lesson = List.of();

    /** The scans, read, and the view of them. */
    private record Shown(OpenedScans opened, ScansState view) {}

    public DemoExhibits(Path folder, ToIntBiFunction<String[], Console> commands) {
        this.folder = folder;
        this.commands = commands;
        painter.setDaemon(true);
    }

    /** Where the scans lie. */
    public Path scansFolder() {
        return folder.resolve("scans");
    }

    /** Begins to draw the scans, once the first picture is on the screen. */
    public void begin() {
        if (painter.getState() == Thread.State.NEW) {
            painter.start();
        }
    }

    /** Waits until all scans are drawn. */
    public void finish() {
        begin();
        try {
            painter.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void paint() {
        try {
            Archive archive = new Archive(folder);
            Roll roll = Roll.of(archive.roll(ROLL).records()).orElseThrow();
            new DemoScans(roll, scansFolder()).draw();
            OpenedScans opened = OpenedScans.of(archive, roll, scansFolder());
            Review review = Review.of(archive.reviewOf(ROLL).records());
            ScansState view = ScansState.of(
                    roll, scansFolder().toString(), opened.sorted().asked(), review);
            shown = Optional.of(new Shown(opened, ScanKeys.after(view, ScanKeys.OTHER_VIEW)));
        } catch (IOException e) {
            // The step stays without its picture: the demo's folder is gone, and the screen says so itself.
        }
    }

    @Override
    public Optional<Grid> scans(Size size) {
        return shown.map(it -> ScansView.render(it.view, it.opened.folder().pictures(), size.columns(), size.rows()));
    }

    /** What the commands print, what is found before the tables. */
    @Override
    public List<String> lesson() {
        if (lesson.isEmpty()) {
            List<String> review = printed("review");
            int end = review.lastIndexOf("") + 1;
            List<String> lines = new ArrayList<>(review.subList(end, review.size()));
            printed("rating", ROLL_OF_TEST).stream()
                    .filter(it -> it.startsWith("Rate "))
                    .forEach(lines::add);
            lines.add("");
            lines.addAll(review.subList(0, end));
            lesson = List.copyOf(lines);
        }
        return lesson;
    }

    private static final String ROLL_OF_TEST = "R0003";

    private List<String> printed(String... words) {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        List<String> arguments = new ArrayList<>(List.of("--data=" + folder));
        arguments.addAll(List.of(words));
        commands.applyAsInt(
                arguments.toArray(String[]::new),
                new Console(printed, OutputStream.nullOutputStream(), Map.of("LC_ALL", "C.UTF-8")));
        return printed.toString(StandardCharsets.UTF_8).lines().toList();
    }
}
