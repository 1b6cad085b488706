package takeup.metering;

import java.util.ArrayList;
import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.prompt.CameraStateParser;
import takeup.prompt.CommandRejected;
import takeup.roll.SettingPatch;

/**
 * Flash: {@code flash on}, guide numbers ({@code flash gn36m 3m 1/4}) and the flash meter's aperture ({@code m flash
 * 8}).
 */
public final class FlashCommand implements Command {
    static final Warning CAUTION =
            new Warning(Warning.Code.FLASH_VOLTAGE, "an old unit can harm the contacts: keep to the camera's limit");

    public static final CommandInfo INFO = CommandInfo.of(
                    "flash", "flash is on or off, or its guide number, distance and power")
            .usage("flash on", "flash gn36m 3m 1/4")
            .form("flash on", "the frames that follow are with flash")
            .form("flash gn36m 3m 1/4", "guide number in metres, distance, power")
            .form("flash gn36m f8", "the distance at which it is right")
            .form("flash gn36m 3m fill -1", "the power that puts it a stop under the pair in hand")
            .form("flash off", "without flash")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.rest();
        if (words.isEmpty()) {
            throw new CommandRejected("flash is on or off, or a guide number with the distance: flash gn36 3m 1/4");
        }
        if (words.get(0).startsWith("gn")) {
            context.roll();
            return GuideNumberReading.of(GuideNumberArguments.of(words), arguments.line(), context);
        }
        String value = arguments.one("flash on, flash gn36 3m");
        Camera camera = context.camera();
        boolean isOn = CameraStateParser.onOrOff("flash", value);
        boolean isFirst = isOn && isFirstToday(context);
        List<JournalEntry> entries =
                new ArrayList<>(List.of(new JournalEntry.OnDay(context.changedSetup(SettingPatch.flash(isOn)))));
        if (isFirst) {
            entries.add(cautioned(camera));
        }
        List<Warning> warnings = new ArrayList<>();
        FlashSync sync = isOn ? FlashSync.of(context.reply(entries).after()) : FlashSync.KEPT;
        sync.setup()
                .ifPresent(it ->
                        entries.add(new JournalEntry.OnDay(new CameraEvent.CameraSetupChanged(camera.key(), it))));
        sync.warning().ifPresent(warnings::add);
        if (isFirst) {
            warnings.add(CAUTION);
        }
        return context.reply(entries)
                .says(camera.key() + ": flash " + value, "." + sync.words())
                .titled("flash " + value + " " + camera.key())
                .warnings(warnings)
                .accepted();
    }

    /** Whether the caution about old units was not given for any camera today: it is given once a day. */
    static boolean isFirstToday(CommandContext context) {
        return context.state()
                .history()
                .on(context.now().toLocalDate())
                .events(CameraEvent.FlashCautioned.class)
                .findAny()
                .isEmpty();
    }

    /** That the caution was given. */
    static JournalEntry cautioned(Camera camera) {
        return new JournalEntry.OnDay(new CameraEvent.FlashCautioned(camera.key()));
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, Completions.ON_OFF);
    }
}
