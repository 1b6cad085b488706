package takeup.reviewing;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.CameraClocks;
import takeup.files.ExifFile;
import takeup.files.ScanFolder;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.RollArgument;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.scans.CameraClock;
import takeup.scans.DigitalMatches;
import takeup.scans.DigitalShot;
import takeup.scans.NaturalOrder;
import takeup.scans.ScreenClock;
import takeup.text.English;
import takeup.text.IsoTime;
import takeup.text.Width;

/** {@code takeup digital}: the files of the digital camera beside the frames of a roll, by time. */
@Command(
        name = "digital",
        description = {
            "Lays the digital files of the same day beside the frames of a roll, with what they were exposed at.",
            "First tell how far the digital camera's clock is off: photograph slate clock on the screen, then "
                    + "--clock-picture that file. Files are only read."
        },
        footer = {
            "",
            "For example:",
            "  takeup digital --clock-picture card/clock.jpg --shows 15:04:05",
            "  takeup digital 1 card"
        })
public final class DigitalSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(index = "0", paramLabel = "ROLL", arity = "0..1", description = "Its number: R0007, r7, or 7.")
    RollArgument roll;

    @Parameters(
            index = "1",
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "The folder with the digital camera's JPEG files.")
    String folder;

    @Option(
            names = "--clock-picture",
            paramLabel = "FILE",
            description = "A digital picture of slate clock on the screen: the camera's clock is known from then on.")
    String clock;

    @Option(
            names = "--shows",
            paramLabel = "TIME",
            description =
                    "With --clock-picture: the time that is to be seen on it, where its code cannot be read: 15:04:05.")
    String shows;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        if (clock != null) {
            if (roll != null || json.isAsked()) {
                throw new CommandFailed(2, "--clock-picture stands without a roll");
            }
            return set();
        }
        if (shows != null) {
            throw new CommandFailed(2, "--shows goes with --clock-picture");
        }
        if (roll == null || folder == null) {
            throw new CommandFailed(2, "takeup digital takes a roll and a folder, or --clock-picture and a file");
        }
        Roll found = roll.find(global).roll();
        Path path = ScansSubcommand.folder(folder);
        List<String> problems = new ArrayList<>();
        List<DigitalShot> shots = shots(path, problems);
        problems.forEach(global.console()::error);
        Map<String, CameraClock> clocks = CameraClocks.of(global.folder());
        DigitalMatches anchors = DigitalMatches.of(found, shots, clocks);
        if (json.isAsked()) {
            global.console().json("digital", json(found, anchors, clocks, shots));
        } else {
            print(found, anchors, clocks, shots);
        }
        return problems.isEmpty() ? 0 : 1;
    }

    private int set() throws IOException {
        Path path = Path.of(clock);
        if (!Files.isRegularFile(path)) {
            throw new CommandFailed(1, clock + " is no file");
        }
        DigitalShot picture = ExifFile.of(path, clock)
                .orElseThrow(() -> new CommandFailed(
                        1, clock + " does not say when it was taken: use the file as it comes from the camera"));
        OffsetDateTime shown = shows != null
                ? typed(picture)
                : ScanFolder.clock(path)
                        .map(ScreenClock::at)
                        .orElseThrow(() -> new CommandFailed(
                                1, "no clock could be read on " + clock + ": say what it shows, --shows 15:04:05"));
        CameraClock found = CameraClock.of(picture, shown);
        CameraClocks.keep(global.archive(), found);
        global.console()
                .line(found.camera() + ": its clock is " + found.words() + " (it said " + picture.at() + ", the screen "
                        + IsoTime.of(shown) + "). It is on disk.");
        return 0;
    }

    /** The time that was read off the picture by eye, on the day on which the camera's clock comes nearest to it. */
    private OffsetDateTime typed(DigitalShot picture) {
        try {
            LocalTime time = LocalTime.parse(shows);
            OffsetDateTime best = null;
            for (int days = -1; days <= 1; days++) {
                OffsetDateTime at = picture.at()
                        .toLocalDate()
                        .plusDays(days)
                        .atTime(time)
                        .atZone(ZoneId.systemDefault())
                        .toOffsetDateTime();
                OffsetDateTime byCamera = picture.at().atOffset(picture.offset().orElse(at.getOffset()));
                if (best == null
                        || Duration.between(byCamera, at)
                                        .abs()
                                        .compareTo(
                                                Duration.between(byCamera, best).abs())
                                < 0) {
                    best = at;
                }
            }
            return best;
        } catch (DateTimeException e) {
            throw new CommandFailed(2, shows + " is no time of day: --shows 15:04:05");
        }
    }

    private static List<DigitalShot> shots(Path folder, List<String> problems) throws IOException {
        TreeSet<String> names = new TreeSet<>(NaturalOrder.BY_NAME);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                String name = path.getFileName().toString();
                String lower = name.toLowerCase(Locale.ROOT);
                if (!name.startsWith(".")
                        && (lower.endsWith(".jpg") || lower.endsWith(".jpeg"))
                        && Files.isRegularFile(path)) {
                    names.add(name);
                }
            }
        }
        List<DigitalShot> shots = new ArrayList<>();
        for (String name : names) {
            try {
                Optional<DigitalShot> shot = ExifFile.of(folder.resolve(name), name);
                shot.ifPresent(shots::add);
                if (shot.isEmpty()) {
                    problems.add(name + " does not say when it was taken");
                }
            } catch (IOException e) {
                problems.add(name + " cannot be read: " + IoErrorText.words(e));
            }
        }
        return shots;
    }

    private void print(Roll found, DigitalMatches anchors, Map<String, CameraClock> clocks, List<DigitalShot> shots) {
        Console out = global.console();
        out.line(found.id() + " · " + found.film().stock().name() + " · " + English.count(shots.size(), "digital file")
                + " in " + folder);
        for (String camera :
                new TreeSet<>(shots.stream().map(DigitalShot::camera).toList())) {
            out.line(camera + ": "
                    + Optional.ofNullable(clocks.get(camera))
                            .map(it -> "its clock is " + it.words() + ", found "
                                    + it.foundAt().toLocalDate())
                            .orElse("its clock was never compared, and is taken as right: photograph "
                                    + "slate clock, then takeup digital --clock-picture FILE"));
        }
        for (DigitalMatches.FrameMatches row : anchors.rows()) {
            Setting setting = row.frame().exposure().setting();
            String set = (setting.aperture().map(Object::toString).orElse("") + " "
                            + setting.time().map(Object::toString).orElse(""))
                    .strip();
            String frame = Width.padLeft(Integer.toString(row.frame().number()), 4) + "  "
                    + IsoTime.of(row.at()).substring(11, 19) + "  "
                    + Width.pad(set.isEmpty() ? row.frame().kind().toString() : set, 14);
            out.line((frame
                            + (row.files().isEmpty()
                                    ? ""
                                    : "  " + words(row.files().get(0))))
                    .stripTrailing());
            for (DigitalMatches.Match file : row.files()
                    .subList(Math.min(1, row.files().size()), row.files().size())) {
                out.line(" ".repeat(Width.of(frame)) + "  " + words(file));
            }
        }
        if (anchors.framesWithoutTime() > 0) {
            out.line(English.count(anchors.framesWithoutTime(), "frame")
                    + English.agree(anchors.framesWithoutTime(), " is", " are") + " left out: the time is not known");
        }
        if (!anchors.unmatched().isEmpty()) {
            out.line(English.count(anchors.unmatched().size(), "file")
                    + English.agree(anchors.unmatched().size(), " is", " are")
                    + " of another time than this roll, by more than " + DigitalMatches.MARGIN.toMinutes()
                    + " minutes");
        }
    }

    private static String words(DigitalMatches.Match file) {
        return file.shot().name() + "  " + file.words() + "  " + file.shot().settings();
    }

    private static Json.Obj json(
            Roll found, DigitalMatches anchors, Map<String, CameraClock> clocks, List<DigitalShot> shots) {
        List<Json> cameras = new ArrayList<>();
        for (String camera :
                new TreeSet<>(shots.stream().map(DigitalShot::camera).toList())) {
            cameras.add(Json.object()
                    .and("camera", camera)
                    .and(
                            "behindSeconds",
                            Optional.ofNullable(clocks.get(camera)).map(CameraClock::behindSeconds)));
        }
        List<Json> frames = new ArrayList<>();
        for (DigitalMatches.FrameMatches row : anchors.rows()) {
            List<Json> files = new ArrayList<>();
            row.files()
                    .forEach(it -> files.add(Json.object()
                            .and("file", it.shot().name())
                            .and("at", IsoTime.of(it.at()))
                            .and("afterSeconds", it.afterSeconds())
                            .and("set", it.shot().settings())));
            frames.add(Json.object()
                    .and("frame", row.frame().number())
                    .and("at", IsoTime.of(row.at()))
                    .and("files", files));
        }
        return Json.object()
                .and("roll", found.id())
                .and("cameras", cameras)
                .and("frames", frames)
                .and("unknownTimes", anchors.framesWithoutTime())
                .and(
                        "apart",
                        anchors.unmatched().stream().map(DigitalShot::name).toList());
    }
}
