package takeup.reviewing;

import java.util.List;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.roll.Roll;
import takeup.scans.Proposal;

/** The options of {@code takeup scans} that put right how scans were laid beside frames. */
final class AdjustOptions {
    @Option(names = "--reverse", description = "The film is the other way round.")
    boolean reverse;

    @Option(names = "--shift", paramLabel = "N", description = "All scans show so many frames later: 1, -1.")
    int shift;

    @Option(
            names = "--swap",
            paramLabel = "PAIR",
            description = "Exchanges the frames of two scans, counted from 1: 3,4.")
    List<String> swaps = List.of();

    @Option(
            names = "--place",
            paramLabel = "PLACE",
            description = "A scan, counted from 1, and the frame it shows: 3=4; 3=none for one that nobody logged.")
    List<String> places = List.of();

    boolean isGiven() {
        return reverse || shift != 0 || !swaps.isEmpty() || !places.isEmpty();
    }

    Proposal apply(Proposal proposal, Roll roll) {
        Proposal now = reverse ? proposal.turned() : proposal;
        now = shift == 0 ? now : now.shifted(0, shift);
        for (String swap : swaps) {
            String[] both = swap.split(",", -1);
            if (both.length != 2) {
                throw new CommandFailed(2, swap + " does not name two scans: --swap 3,4");
            }
            now = now.swapped(scan(both[0], now), scan(both[1], now));
        }
        for (String place : places) {
            int sign = place.indexOf('=');
            if (sign < 1) {
                throw new CommandFailed(2, place + " does not name a scan and its frame: --place 3=4, or 3=none");
            }
            String frame = place.substring(sign + 1);
            now = now.placed(scan(place.substring(0, sign), now), frame.equals("none") ? -1 : slot(frame, now, roll));
        }
        return now;
    }

    private static int scan(String typed, Proposal proposal) {
        int number = FrameNumbers.number(typed);
        if (number < 1 || number > proposal.scans().size()) {
            throw new CommandFailed(
                    2,
                    "there is no scan " + typed + ": they are counted from 1 to "
                            + proposal.scans().size());
        }
        return number - 1;
    }

    private static int slot(String typed, Proposal proposal, Roll roll) {
        int index = FrameNumbers.of(typed, roll).get(0);
        for (int i = 0; i < proposal.slots().size(); i++) {
            if (proposal.slots().get(i).frames().contains(index)) {
                return i;
            }
        }
        throw new CommandFailed(2, "frame " + typed + " has no place here");
    }
}
