package takeup.reviewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.console.Console;
import takeup.files.SidecarFiles;
import takeup.journal.Archive;
import takeup.json.Json;
import takeup.options.JsonOption;
import takeup.review.Density;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;
import takeup.text.English;
import takeup.text.Width;

/** What was accepted and judged before of a roll, to be printed. */
record AcceptedScans(Roll roll, Review review, Archive archive) {
    void print(Console console, JsonOption json) {
        if (json.isAsked()) {
            console.json("scans-accepted", json());
            return;
        }
        console.line(roll.id() + " · " + roll.film().stock().name() + " · "
                + review.accepted()
                        .map(it -> English.count(it.scans().size(), "scan") + " in " + it.folder())
                        .orElse("no scans accepted yet: takeup scans " + roll.id() + " FOLDER"));
        lines().forEach(console::line);
        List<String> stale = SidecarFiles.stale(roll, review, archive);
        if (!stale.isEmpty()) {
            console.line("sidecars that are behind the log: " + String.join(", ", stale) + "; --sidecars renews them");
        }
        List<Integer> gone = review.missingFrames(roll.frames());
        if (!gone.isEmpty()) {
            console.line("frames that were there when the scans were accepted, and are not now: "
                    + String.join(", ", gone.stream().map(String::valueOf).toList()) + "; accept the scans again");
        }
    }

    /** A line for each frame with its accepted scan and its verdict. */
    private List<String> lines() {
        List<Optional<String>> scans = review.scans(roll);
        List<Optional<Density>> verdicts = review.verdicts(roll);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            lines.add((Width.padLeft(Integer.toString(roll.frames().get(i).number()), 4) + "  "
                            + Width.pad(scans.get(i).orElse("–"), 28) + "  "
                            + Width.pad(verdicts.get(i).map(Object::toString).orElse(""), 5) + "  "
                            + roll.frames().get(i).note().orElse(""))
                    .stripTrailing());
        }
        return lines;
    }

    private Json.Obj json() {
        List<Optional<String>> scans = review.scans(roll);
        List<Optional<Density>> verdicts = review.verdicts(roll);
        List<Json> frames = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            frames.add(Json.object()
                    .and("frame", roll.frames().get(i).number())
                    .and("scan", scans.get(i))
                    .and("verdict", verdicts.get(i)));
        }
        return Json.object()
                .and("roll", roll.id())
                .and("folder", review.accepted().map(ReviewEvent.Accepted::folder))
                .and("frames", frames)
                .and("staleSidecars", SidecarFiles.stale(roll, review, archive));
    }
}
