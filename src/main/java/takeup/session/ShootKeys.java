package takeup.session;

import java.util.List;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.session.Session.Page;

/** Keys of the shoot screen: the highlight in the list of choices, the next camera, the end of the day. */
final class ShootKeys {
    private static final String FIND = "find ";

    private ShootKeys() {}

    /** Moves the highlight; the first press puts it on the best choice. */
    static Session choose(Session session, int by) {
        int last = Math.max(session.choices().size(), session.picks().rows().size()) - 1;
        int from = Math.min(last, session.view().chosen());
        int to = from < 0 ? session.bestChoice() : Math.min(last, from + by);
        Session chosen = session.with(session.view().chosen(Math.max(0, to)));
        return chosen.highlighted()
                .map(it -> "Enter sets " + it.aperture()
                        + it.time().map(time -> " " + time).orElse("") + ", Space sets it and logs a frame")
                .or(() -> chosen.highlightedPick().map(it -> "Enter does what " + it.line() + " does: " + it.text()))
                .map(it -> chosen.say(LastAnswer.Tone.QUIET, it))
                .orElse(chosen);
    }

    /** The next camera or back in use, or the one before. */
    static Transition nextCamera(Session session, int by) {
        ShootState today = session.afterPending().asOf(session.now());
        List<CameraPlace> places = today.placesInUse();
        int at = today.placeInHand().map(places::indexOf).orElse(-1);
        CameraPlace next = places.get(at < 0 ? 0 : Math.floorMod(at + by, places.size()));
        return LineFlow.take(
                session,
                "cam " + next.camera() + next.back().map(it -> " " + it).orElse(""));
    }

    /** What was found last, with the word for the next search on an empty prompt; pressed again it goes back. */
    static Transition find(Session session) {
        Session asked =
                session.prompt().isEmpty() ? session.with(session.prompt().with(FIND)) : session;
        Session bare = isBareFind(session) ? session.with(session.prompt().with("")) : session;
        return session.view().page() == Page.FIND
                ? ViewFlow.show(bare, session.view().previous())
                : ViewFlow.show(asked, Page.FIND);
    }

    /** Whether nothing stands on the prompt but the word that F8 put there. */
    static boolean isBareFind(Session session) {
        return session.prompt().text().equals(FIND);
    }

    /** Where every roll of the day is; those that are not in memory are read first. */
    static Transition endDay(Session session) {
        return session.view().page() == Page.DAY_END
                ? ViewFlow.show(session, session.view().previous())
                : LineFlow.take(session, "day-end");
    }
}
