package takeup.records;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.ReviewEvent;

/** Decisions about scans to JSON and back. A kind that is not known is kept as it stands. */
public final class ReviewEventJson implements ReviewEvent.Cases<String> {
    /** The event as it is written down. */
    public static String text(ReviewEvent event) {
        return event.match(new ReviewEventJson());
    }

    @Override
    public String accepted(ReviewEvent.Accepted accepted) {
        return JsonText.line(Json.object()
                .and("event", "accepted")
                .and("folder", accepted.folder())
                .and("reversed", accepted.isReversed())
                .and("confidence", Json.digits(accepted.confidence(), 6))
                .and(
                        "scans",
                        accepted.scans().stream()
                                .map(it -> Json.object()
                                        .and("file", it.file())
                                        .and(
                                                "frames",
                                                it.frames().stream()
                                                        .map(ReviewEventJson::of)
                                                        .toList()))
                                .toList()));
    }

    @Override
    public String judged(ReviewEvent.Judged judged) {
        return JsonText.line(Json.object()
                .and("event", "judged")
                .and("frame", of(judged.frame()))
                .and("verdict", judged.verdict()));
    }

    @Override
    public String unknown(ReviewEvent.Unknown unknown) {
        return unknown.text();
    }

    private static Json.Obj of(FrameKey key) {
        return Json.object().and("number", key.number()).and("at", key.at());
    }

    public static ReviewEvent event(Fields fields, Supplier<String> text) {
        String kind = fields.text("event");
        return switch (kind) {
            case "accepted" ->
                new ReviewEvent.Accepted(
                        fields.text("folder"),
                        fields.flag("reversed"),
                        fields.number("confidence"),
                        fields.list("scans").stream()
                                .map(Fields::of)
                                .map(ReviewEventJson::placed)
                                .toList());
            case "judged" -> new ReviewEvent.Judged(key(fields.inner("frame")), verdict(fields.maybeText("verdict")));
            default -> new ReviewEvent.Unknown(kind, text.get());
        };
    }

    private static ReviewEvent.PlacedScan placed(Fields fields) {
        List<FrameKey> frames = fields.list("frames").stream()
                .map(Fields::of)
                .map(ReviewEventJson::key)
                .toList();
        return new ReviewEvent.PlacedScan(fields.text("file"), frames);
    }

    private static FrameKey key(Fields fields) {
        return new FrameKey(fields.count("number"), fields.maybeTime("at"));
    }

    private static Optional<Density> verdict(Optional<String> word) {
        return word.map(
                it -> Density.named(it).orElseThrow(() -> new Fields.Unreadable("verdict " + it + " is not known")));
    }
}
