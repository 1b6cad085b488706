package takeup.reviewing;

import java.io.IOException;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.disk.IoErrorText;
import takeup.files.ProfileFiles;
import takeup.files.RatedProfile;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.options.GlobalOptions;
import takeup.options.OwnProfile;
import takeup.text.Plain;

/** A stock that is to be rated otherwise from now on, in the photographer's own profile of it. */
record RatedStock(GlobalOptions global, String key) {
    /** Writes a usual index into the profile, after a yes. */
    void write(String index) {
        Kit kit = global.kit();
        Console console = global.console();
        Stock stock = kit.stock(key).orElseThrow(() -> new CommandFailed(1, kit.whyNot(Kit.Sort.STOCKS, key)));
        OwnProfile own = new OwnProfile(global, Kit.Sort.STOCKS, key);
        if (Plain.number(stock.usualIndex().arithmetic()).equals(index)) {
            console.line(key + " is usually rated at " + index + " already.");
            return;
        }
        String text = ProfileFiles.of(global.folder())
                .file(Kit.Sort.STOCKS, key)
                .map(Kit.File::text)
                .flatMap(it -> RatedProfile.of(it, index))
                .orElseThrow(() -> new CommandFailed(
                        1, own.path() + ": usualEI could not be found in it: change it by hand to " + index));
        if (!InTerminal.answersYes(
                console::line,
                "Write " + index + " instead of " + stock.usualIndex() + " as the usual index of " + stock.name()
                        + " into " + own.path() + "? Type yes.")) {
            throw new CommandFailed(1, "nothing was written");
        }
        try {
            own.write(text);
        } catch (IOException e) {
            throw new CommandFailed(1, "NOT SAVED: " + IoErrorText.words(e));
        }
        console.line(own.path() + " says " + index + " from now on; a roll that is loaded already keeps its own.");
    }
}
