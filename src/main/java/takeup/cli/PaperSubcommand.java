package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.handoff.FrameForm;
import takeup.history.ShootState;
import takeup.options.ClockOption;
import takeup.options.GlobalOptions;
import takeup.options.OutputOption;
import takeup.options.PaperOption;
import takeup.options.RollArgument;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code takeup paper}: a form to go on with by pen, the rolls in the cameras filled in. Only reads. */
@Command(
        name = "paper",
        description = {
            "Prints a form to write frames on with a pen, for the day the laptop dies: a sheet for each roll "
                    + "that is in a camera, and an empty one.",
            "On the prompt, paper ROLL and a line a frame (7 5.6 125 veil) read it back."
        },
        footer = {"", "For example:", "  takeup paper", "  takeup paper 2 --html -o forms.html"})
final class PaperSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(
            paramLabel = "ROLL",
            arity = "0..*",
            description =
                    "The rolls to make sheets for: R0007, r7, 7, or a row of them, 4-7; else those in the cameras.")
    List<RollArgument> rolls;

    @Option(names = "--html", description = "A page to print; a FILE that ends in .html is one too.")
    boolean html;

    @Mixin
    PaperOption paper;

    @Mixin
    OutputOption output;

    @Mixin
    ClockOption clock;

    @Override
    public Integer call() throws IOException {
        boolean isPage = html || output.endsWith(".html", ".htm");
        String size = paper.size().orElse(FrameForm.PAPERS.get(0));
        if (paper.isGiven() && !isPage) {
            throw new CommandFailed(2, "--paper goes with --html, or a FILE that ends in .html");
        }
        OffsetDateTime now = clock.clock().now();
        ShootState state = global.open().state().asOf(now);
        List<Roll> chosen = rolls == null ? inCameras(state) : named();
        String next = state.nextRoll(global.settings().writer()).toString();
        if (isPage) {
            output.exact(global.console(), FrameForm.html(chosen, next, now.toLocalDate(), size));
        } else {
            output.text(global.console(), FrameForm.text(chosen, next, now.toLocalDate()));
        }
        return 0;
    }

    private static List<Roll> inCameras(ShootState state) {
        return state.rolls().values().stream()
                .filter(it -> it.state() == Roll.State.OPEN || it.state() == Roll.State.REWOUND)
                .toList();
    }

    private List<Roll> named() {
        List<Roll> all = new ArrayList<>();
        for (RollId id : RollArgument.rows(rolls, global)) {
            all.add(Roll.of(global.archive().roll(id).records())
                    .orElseThrow(() -> new CommandFailed(1, "there is no roll " + id + " in " + global.folder())));
        }
        return all;
    }
}
