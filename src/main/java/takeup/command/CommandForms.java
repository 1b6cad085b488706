package takeup.command;

import java.util.ArrayList;
import java.util.List;

/**
 * The forms of a word of the prompt, each with what it means: what {@code help fix} tells. Read only when it is asked
 * for.
 */
public final class CommandForms {
    private CommandForms() {}

    /** A line as it is typed, {@code fix 3-5 filter yellow}, and what it means. */
    public record Form(String typed, String means) {}

    /** The forms of a word, the usual one first; never empty. */
    public static List<Form> of(CommandTable.Word word) {
        String text = text(word.word());
        if (text.isEmpty()) {
            return List.of(new Form(word.example(), word.does()));
        }
        List<Form> forms = new ArrayList<>();
        for (String line : text.split("\n")) {
            int bar = line.indexOf(" | ");
            forms.add(new Form(
                    line.substring(0, bar).strip(), line.substring(bar + 3).strip()));
        }
        return forms;
    }

    private static String text(String word) {
        return switch (word) {
            case "4 125" -> """
                    4 125 ; bow seat | f/4 at 1/125, with a note
                    8 | another aperture, the time stays
                    1/60 | another time, the aperture stays
                    f32 1/2000 | beyond the rings: with its sign
                    b12s | bulb, 12 s by the watch
                    8 4m10s | long times; also 2min, 1h02m30s
                    4 125 3m x5 | five frames, the subject 3 m away""";
            case "." -> """
                    . | the same again; Space does it too
                    . ; words | the same again, with a note
                    x5 | five more""";
            case ";" -> """
                    ; words | a note on the newest frame
                    4 125 ; words | a frame and its note in one line""";
            case "m" -> """
                    m 5.6 125 | the pair that the meter shows
                    m 5.6.3 125 | f/5.6 and three tenths
                    m ev11.3 | an exposure value, at ISO 100
                    m low 5.6 125 and 11 125 | several; the lowest counts, for the shadows
                    m 5.6 125 and 11 125 | several; their mean counts
                    m spot 9.3 z3 | a spot reading, placed on zone III
                    m reflected ev11 | reflected, not incident
                    m flash 8 | the aperture that the flash meter shows
                    m camera 4 500 @400 | a digital camera's own meter
                    m sky shade | the daylight rule: snow sun hazy cloudy overcast shade
                    m 2500lx | in lux; fc and cd too
                    m | the last reading again, with its age""";
            case "set" -> """
                    set 4 125 | aperture and time in hand
                    set 50mm | focal length of a zoom
                    set 3m | distance of the subject""";
            case "load" -> """
                    load cn400 | at its usual index
                    load cn400 @200 | at another index
                    load bw400 @800 push 1 | to be pushed one stop
                    load cn400 120 frames 15 | film size and frames, where they are not the usual ones
                    load | the same film again as in the roll before""";
            case "day-end" -> """
                    day-end | every roll of the day: closed, in a camera, or missing; what is odd; what to write on each
                    day-end r1 r2 r4-r7 | these are in your hand: which are not?""";
            case "tally" -> """
                    tally | one frame counted, its setting to be filled in later
                    tally x3 | three of them
                    fix 1 4 60 | fills one in; so does a line of paper""";
            case "paper" -> """
                    paper r1 | reads the form of R0001 back; alone: of the roll in hand
                    7 5.6 125 veil | frame 7, and words; 7-9 for a row, " for the same as above
                    done | ends it, and names the lines that did not fit""";
            case "rewind" -> """
                    rewind | out of the camera with its tongue out; says what to write on the cassette
                    load r3 | goes on with it: so many blank frames first, lens capped
                    unload r3 | or closes it""";
            case "routine" -> """
                    routine off | no looks after loading, also on the days to come
                    routine on | after the first roll of the day in each camera or back: film, meter, is it moving?
                    routine skip | leaves out what is asked now; Esc does it too
                    routine | what is asked now""";
            case "unload" -> """
                    unload | finishes the roll; asks while frames are left
                    unload yes | the same without the question""";
            case "cam" -> """
                    cam 645 | takes up a camera, with the back it had last
                    cam 645 2 | a camera and one of its backs""";
            case "fix" -> """
                    fix 7 4 125 | frame 7 was f/4 at 1/125
                    fix 3-5 filter yellow | frames 3 to 5 had the yellow filter
                    fix 7 ; stroke seat | another note
                    fix 7 blank | frame 7 was none; also unlogged, exposed, slate
                    fix r2 7 8 | a frame of another roll, also a finished one
                    fix roll @400 | the roll's index was typed wrong""";
            case "insert" -> """
                    insert 7 4 125 | a frame was forgotten before frame 7
                    insert r2 7 4 125 | the same on another roll""";
            case "drop" -> """
                    drop 7 | frame 7 never happened; later ones are renumbered
                    drop r2 7 | the same on another roll""";
            case "move" -> """
                    move 3 cam 645 | frame 3 was shot on the 645
                    move 3-5 cam 645 2 | frames 3 to 5 were shot on that back""";
            case "blank" -> """
                    blank | one wasted frame
                    blank x2 ; lens cap | two, and why""";
            case "rating" -> """
                    rating | begins the test on this roll, or logs the card whose setting is in hand; Space does that too""";
            case "slate" -> """
                    slate | logs a frame and shows the sheet to photograph as it
                    slate ; stroke side | with a note
                    slate show | shows it again, logs nothing
                    slate clock | the time of day, for the digital camera to photograph; logs nothing""";
            case "meter" -> """
                    meter hand | the meter in hand
                    meter preset 1/125 | a meter that shows apertures, and the time it is preset to""";
            case "hold" -> """
                    hold f2.8 | suggestions keep this aperture
                    hold 1/250 | suggestions keep this time
                    hold off | neither is kept""";
            case "bias" -> """
                    bias +1/3 | a third of a stop more light on the film
                    bias -1 | a stop less
                    bias 0 | none""";
            case "filter" -> """
                    filter yellow | by its name, with its usual factor
                    filter yellow 3x | with this filter's own factor
                    filter +1.5 | by the stops that it takes
                    filter nd0.9 | grey, by its density; nd8 by its number
                    filter yellow and nd0.9 | two on each other
                    filter off | none""";
            case "ext" -> """
                    ext 110mm | from lens to film, the whole draw
                    ext off | none""";
            case "tube" -> """
                    tube 30mm | what is added to the lens
                    tube off | none""";
            case "mag" -> """
                    mag 0.5 | half life size on the film; mag 1:2 too
                    mag 0.5m | from the distance to the subject
                    mag off | none""";
            case "flash" -> """
                    flash on | the frames that follow are with flash
                    flash gn36m 3m 1/4 | guide number in metres, distance, power
                    flash off | without flash""";
            case "tripod" -> """
                    tripod on | lifts the hand-held limit
                    tripod off | it stands again""";
            case "note" -> """
                    note the eight in two rows | a note on the roll in hand
                    note r7 words | on another roll""";
            case "condition" -> """
                    condition torn at the rewind | what the lab must know: torn, opened, stuck, partial
                    condition r7 opened | of another roll""";
            case "shoot" -> """
                    shoot | back to the shoot screen
                    shoot Regatta day | opens a shoot for today; rolls loaded from now on belong to it
                    shoot Regatta day on tomorrow | for another day; on 2026-09-12 too
                    shoot Regatta day at 59.33,18.07 | where it is, in degrees: brings the sun's times
                    shoot Regatta day client Harriet Ruder | for whom; it stays on this machine""";
            case "plan" -> """
                    plan | the plan, with the sun's own moments
                    plan 16:30 Prize-giving wants 12 | a key moment and the frames that it wants
                    plan 16:30 Prize-giving wants 12 must | one that the day is lost without
                    plan 16:30 Prize-giving cam 645 back 2 | where it will be shot
                    plan 16:30 Prize-giving light ev12 | the light to expect; light shade too
                    plan 9:00 Boats on 2026-09-12 | on another day
                    plan 3 16:45 | number 3 at another time
                    plan late 20 | all that are to come 20 minutes later; plan early 5 too
                    plan drop 3 | number 3 is out of the plan""";
            case "bag" -> """
                    bag | the film that is left, and the night-before list
                    bag add 10 cn400 120 | film into the bag
                    bag add 5 cn400 120 expires 2027-03 | with the month on the box
                    bag add 5 cn400 120 price 6.20 | with what one roll costs
                    bag take 1 cn400 120 | out of it; load takes its roll by itself""";
            case "help" -> """
                    help | all keys and words of this place
                    help fix | one word with its forms""";
            case "theme" -> """
                    theme | the next look
                    theme mono | this one""";
            case "undo" -> """
                    undo | takes back the last line that changed anything, on whichever camera
                    u | the same""";
            case "quit" -> """
                    quit | leaves once all is on disk
                    quit yes | leaves also while something is NOT SAVED, and prints it""";
            default -> "";
        };
    }
}
