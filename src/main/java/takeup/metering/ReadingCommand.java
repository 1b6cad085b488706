package takeup.metering;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.prompt.Sky;

/** {@code m 5.6 125}: a light reading. */
public final class ReadingCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("m", "a light reading; alone: the last one again")
            .usage("m 5.6 125", "m ev11.3", "m low 5.6 125 and 11 125")
            .form("m 5.6 125", "the pair that the meter shows")
            .form("m 5.6.3 125", "f/5.6 and three tenths")
            .form("m ev11.3", "an exposure value, at ISO 100")
            .form("m low 5.6 125 and 11 125", "several; the lowest counts, for the shadows")
            .form("m 5.6 125 and 11 125", "several; their mean counts")
            .form("m spot 9.3 z3", "a spot reading, placed on zone III")
            .form("m reflected ev11", "reflected, not incident")
            .form("m flash 8", "the aperture that the flash meter shows")
            .form("m camera 4 500 @400", "a digital camera's own meter")
            .form("m sky shade", "the daylight rule: snow sun hazy cloudy overcast shade")
            .form("m 2500lx", "in lux; fc and cd too")
            .form("m", "the last reading again, with its age");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return LightReading.reading(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return before.get(before.size() - 1).equals("sky")
                ? Sky.words()
                : List.of("ev", "low", "high", "spot", "reflected", "flash", "camera", "sky", "and");
    }
}
