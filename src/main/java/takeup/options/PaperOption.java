package takeup.options;

import java.util.Optional;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.order.OrderHtml;
import takeup.text.Nearest;

/** {@code --paper SIZE}: what a page is printed on. */
public final class PaperOption {
    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "With --html: what it is printed on, A4 or Letter; else A4, or as the lab's profile says.")
    String typed;

    public boolean isGiven() {
        return typed != null;
    }

    /** The size that was asked for. */
    public Optional<String> size() {
        if (typed == null) {
            return Optional.empty();
        }
        return Optional.of(OrderHtml.PAPERS.stream()
                .filter(it -> it.equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new CommandFailed(
                        2,
                        typed + " is no paper known here: " + String.join(", ", OrderHtml.PAPERS)
                                + Nearest.question(typed, OrderHtml.PAPERS))));
    }
}
