package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.NextMoment;
import takeup.advice.StandingWarnings;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.lettering.BigText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/**
 * The most urgent of the standing warnings on a plate four rows high, so that it is read from where the camera is: that
 * something is not saved comes before all. The others are words on plates of one row, as {@link StatusWords} has them.
 *
 * @param code which one it is; empty for what is not saved
 * @param text in large letters
 */
public record WarningPlate(Optional<Warning.Code> code, String text) {
    private static final String NOT_SAVED = "NOT SAVED";

    /** How many rows it is high. */
    public static final int ROWS = 4;

    /** The most urgent one in words that fit into so many columns; those that large figures show anyway come last. */
    public static Optional<WarningPlate> of(Session session, int columns) {
        if (isNotSaved(session)) {
            return first(Optional.empty(), List.of(NOT_SAVED, "UNSAVED", "DISK"), columns);
        }
        ShootState state = session.shown();
        List<Warning.Code> standing = StandingWarnings.of(state, session.now());
        List<Warning.Code> codes = new ArrayList<>();
        for (Warning.Code code : standing) {
            if (!isLargeAnyway(code)) {
                codes.add(code);
            }
        }
        if (standing.contains(Warning.Code.FRAMES_LEFT)) {
            codes.add(Warning.Code.FRAMES_LEFT);
        }
        for (Warning.Code code : codes) {
            Optional<WarningPlate> plate = first(Optional.of(code), wordings(code, session), columns);
            if (plate.isPresent()) {
                return plate;
            }
        }
        return Optional.empty();
    }

    /** The same where what is wrong with the pair has no other place: it comes before all but what is not saved. */
    static Optional<WarningPlate> withPair(Session session, Optional<Warning> fault, int columns) {
        if (fault.isPresent() && !isNotSaved(session)) {
            Warning.Code code = fault.get().code();
            Optional<WarningPlate> plate = first(Optional.of(code), wordings(code, session), columns);
            if (plate.isPresent()) {
                return plate;
            }
        }
        return of(session, columns);
    }

    /** The first of these words that fits. */
    private static Optional<WarningPlate> first(Optional<Warning.Code> code, List<String> wordings, int columns) {
        for (String words : wordings) {
            WarningPlate plate = new WarningPlate(code, words);
            if (plate.width() <= columns) {
                return Optional.of(plate);
            }
        }
        return Optional.empty();
    }

    /** Whether something was refused by the disk and waits. */
    public static boolean isNotSaved(Session session) {
        return session.saveError().isPresent() && !session.waiting().isEmpty();
    }

    /** The end of the roll is a plate in place of the counter, few frames left are one around their number. */
    private static boolean isLargeAnyway(Warning.Code code) {
        return code == Warning.Code.PAST_END || code == Warning.Code.FRAMES_LEFT;
    }

    /** In few letters, the fullest first. */
    private static List<String> wordings(Warning.Code code, Session session) {
        ShootState state = session.shown();
        Optional<Roll> roll = state.rollInHand();
        return switch (code) {
            case METER_SPEED -> {
                String index = roll.isPresent() ? roll.get().film().index().toString() : "";
                yield List.of("METER " + index, "EI " + index, "EI" + index, "ISO");
            }
            case NO_LIGHT -> List.of("NO READING", "NO LIGHT", "NO EV");
            case STALE_LIGHT -> List.of("OLD LIGHT", "OLD EV", "OLD");
            case MOMENT -> {
                Optional<NextMoment> next = NextMoment.of(state, session.now());
                long minutes = next.isPresent() ? next.get().minutes() : 0;
                yield minutes > 0
                        ? List.of("IN " + minutes + " MIN", minutes + " MIN", "IN " + minutes)
                        : List.of("NOW");
            }
            case FRAMES_LEFT -> {
                int left = roll.isPresent() ? roll.get().framesLeft() : 0;
                yield List.of("FEW LEFT", left + " LEFT", "LEFT");
            }
            case CAMERA_METER -> List.of("CAMERA METER", "CAM METER", "CAM EV", "CAM");
            case MID_GREY -> List.of("MID GREY", "GREY");
            case PUSH_MISMATCH -> List.of("PUSH");
            case DENSE -> List.of("DENSE", "OVER");
            case LIGHT -> List.of("LIGHT", "OVER");
            case CLOCK -> List.of("CLOCK", "TIME");
            case EXPIRED -> List.of("EXPIRED", "DATE");
            case OUT_OF_RANGE -> List.of("NOT ON DIAL", "DIAL");
            case RECIPROCITY, RECIPROCITY_BEYOND -> List.of("LONG");
            default -> List.of(code.standing());
        };
    }

    /** How many columns it takes. */
    public int width() {
        return BigText.smallWidth(text) + 2;
    }

    /** Draws it, with the plain word in its lower rim: that is what a search, or a reader of the screen, finds. */
    public void draw(Grid grid, int column, int row) {
        TextRole role = code.isPresent() ? TextRole.CAUTION : TextRole.ALARM;
        for (int y = 0; y < ROWS; y++) {
            grid.fill(column, row + y, width(), role);
        }
        BigText.drawBelowRim(grid, column + 1, row, text, role);
        String word = code.isPresent() ? code.get().standing() : NOT_SAVED;
        grid.put(column + 1, row + ROWS - 1, Width.cut(word, width() - 2), role);
    }
}
