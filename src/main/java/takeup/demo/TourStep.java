package takeup.demo;

import java.util.List;
import takeup.message.Key;
import takeup.session.Session.Page;

/**
 * A step of the tour.
 *
 * @param title what is seen
 * @param text what it is for, and what to try
 * @param key the key that shows the view
 * @param page the view; the last two steps have pictures of their own in its place
 */
record TourStep(String title, String text, Key.Name key, Page page) {
    static final List<TourStep> ALL = List.of(
            new TourStep(
                    "Regatta day",
                    "Crew portraits at a rowing club's boathouse, all invented. This screen shows what is in your "
                            + "hand: camera and film, frames, the pair to set, and what to watch out for.",
                    Key.Name.ESCAPE,
                    Page.SHOOT),
            new TourStep(
                    "A frame is one key",
                    "Press Space: the frame is saved to disk, then counted. For other settings and a note, type: "
                            + "8 250 ; umpire in the launch. Ctrl-Z takes it back.",
                    Key.Name.ESCAPE,
                    Page.SHOOT),
            new TourStep(
                    "F2: all frames of the roll",
                    "How each was exposed, how far over or under, what to watch out for, and your notes. "
                            + "To correct a frame, type: fix 7 4 125",
                    Key.Name.F2,
                    Page.FRAMES),
            new TourStep(
                    "F4: the plan of the day",
                    "Your key moments between the sun's own. MUST marks those that the day is lost without. "
                            + "takeup says in time when to change the film.",
                    Key.Name.F4,
                    Page.PLAN),
            new TourStep(
                    "F5: film in the bag",
                    "What is left, what a roll costs, when it expires, and whether it is enough for the plan.",
                    Key.Name.F5,
                    Page.BAG),
            new TourStep(
                    "F3: every roll, from the camera to the shelf",
                    "Nine rolls: some in cameras, one exposed, one order at the lab, one back. "
                            + "takeup order new prints the sheet that goes with the film.",
                    Key.Name.F3,
                    Page.ROLLS),
            new TourStep(
                    "The scans are back",
                    "takeup scans lays them beside the frames, and finds which one the lab left out. "
                            + "Each frame is judged by one key: thin, good or dense.",
                    Key.Name.ESCAPE,
                    Page.SHOOT),
            new TourStep(
                    "What the film taught",
                    "The verdicts and a rating test say how to rate these films. That was the tour. "
                            + "Enter leaves you on regatta day, to try it all. Now yours: takeup",
                    Key.Name.ESCAPE,
                    Page.SHOOT));
    /** The step that shows the scans. */
    static final int SCANS = 6;
    /** The step that shows the lesson. */
    static final int LESSON = 7;
}
