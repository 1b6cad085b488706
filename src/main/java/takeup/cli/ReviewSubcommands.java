package takeup.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** The commands for the weeks after: scans come back, frames are judged, ratings are learnt from. */
final class ReviewSubcommands {
    private ReviewSubcommands() {}

    @Command(
            name = "scans",
            description = {
                "Lays the scans of a folder beside the frames of a roll, says why counts differ and how sure it is.",
                "Scans are only read. On a terminal it opens them side by side; with an option, or in a pipe, "
                        + "it prints."
            })
    static final class Scans implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(index = "0", paramLabel = "ROLL", description = "Its number: R0007, r7, or 7.")
        String roll;

        @Parameters(
                index = "1",
                arity = "0..1",
                paramLabel = "FOLDER",
                description = "The folder that came back; left out, what was accepted is shown.")
        String folder;

        @Option(names = "--text", description = "Prints, also on a terminal.")
        boolean text;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Option(names = "--reverse", description = "The film is the other way round.")
        boolean reverse;

        @Option(names = "--shift", paramLabel = "N", description = "All scans show so many frames later: 1, -1.")
        int shift;

        @Option(
                names = "--swap",
                paramLabel = "PAIR",
                description = "Exchanges the frames of two scans, counted from 1: 3,4.")
        List<String> swaps;

        @Option(
                names = "--place",
                paramLabel = "PLACE",
                description = "A scan, counted from 1, and the frame it shows: 3=4; 3=none for one that nobody logged.")
        List<String> places;

        @Option(names = "--accept", description = "Keeps this. Where the evidence is too thin it asks for a yes.")
        boolean accept;

        @Option(
                names = "--thin",
                paramLabel = "FRAMES",
                description = "These frames are thin, by the texture of their shadows: 3-5,9.")
        String thin;

        @Option(names = "--good", paramLabel = "FRAMES", description = "These frames are good.")
        String good;

        @Option(names = "--dense", paramLabel = "FRAMES", description = "These frames are dense.")
        String dense;

        @Option(names = "--unjudged", paramLabel = "FRAMES", description = "Takes the verdict on these frames back.")
        String unjudged;

        @Option(
                names = "--sidecars",
                paramLabel = "HABIT",
                description = "Writes an XMP file beside each accepted scan: full (crew_01.jpg.xmp) or short "
                        + "(crew_01.xmp). None is ever overwritten.")
        String sidecars;

        @Override
        public Integer call() throws IOException {
            return new ScansSubcommand(this, commands).run();
        }
    }

    @Command(
            name = "review",
            description = {
                "Says what the verdicts on all frames teach: consistent, change the rating; scattered, "
                        + "technique or equipment;",
                "one body only, that shutter. With too few frames it says so."
            })
    static final class Lessons implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Option(names = "--html", paramLabel = "FILE", description = "Also writes a page with its plots.")
        String page;

        @Option(
                names = "--rate",
                paramLabel = "STOCK",
                description = "Writes the proposed rating into your own profile of that stock, after a yes.")
        String rate;

        @Override
        public Integer call() throws IOException {
            return new ReviewSubcommand(commands).run(json, Optional.ofNullable(page), Optional.ofNullable(rate));
        }
    }

    @Command(
            name = "frames",
            description = {
                "Prints every frame of the archive, roll by roll; with --json as flat lines",
                "for a spreadsheet or a query engine (takeup schema frames)."
            })
    static final class Frames implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "As JSON lines.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return new FramesSubcommand(commands).run(json);
        }
    }
}
