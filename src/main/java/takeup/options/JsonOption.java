package takeup.options;

import picocli.CommandLine.Option;

/** {@code --json} of the commands whose answer is a JSON object. */
public final class JsonOption {
    @Option(names = "--json", description = "The answer is a JSON object.")
    boolean isAsked;

    public boolean isAsked() {
        return isAsked;
    }
}
