package takeup.options;

import picocli.CommandLine.Option;
import takeup.console.Clock;

/** {@code --clock TIME} of the commands that only read: the day as it stands at another time. */
public final class ClockOption {
    @Option(names = "--clock", paramLabel = "TIME", description = "Another time than now: 2026-09-12T15:00+02:00.")
    String typed;

    public Clock clock() {
        return Clock.ofOption(typed);
    }
}
