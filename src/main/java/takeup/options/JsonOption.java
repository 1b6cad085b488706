package takeup.options;

import picocli.CommandLine.Option;

/** {@code --json} of the commands whose answer is a JSON object. */
public final class JsonOption {
    @Option(names = "--json", description = "The answer is a JSON object.")
    boolean isAsked;

    /** As if it had been typed, or not. */
    public static JsonOption asked(boolean isAsked) {
        JsonOption option = new JsonOption();
        option.isAsked = isAsked;
        return option;
    }

    public boolean isAsked() {
        return isAsked;
    }
}
