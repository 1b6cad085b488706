package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.message.Key;
import takeup.message.Key.Name;
import takeup.session.KeyBinding.When;
import takeup.session.Session.Page;

/** All keys and what they do: one table, read by {@link Update}, the footer, help and {@code takeup keys}. */
final class KeyBindings {
    private static final List<Page> EVERYWHERE = List.of(Page.values());
    private static final List<Page> SHOOT = List.of(Page.SHOOT);
    private static final List<Page> HELP = List.of(Page.HELP);
    private static final List<Page> ELSEWHERE = elsewhere();
    /** Where a letter does not look something up. */
    private static final List<Page> ANSWERED = answered();

    /** All of them, the usual ones first. */
    static final List<KeyBinding> ALL = List.of(
            shoot(Key.typed(" "), "same again: one frame", KeyAction.SAME_AGAIN).like("."),
            key(When.EMPTY, ELSEWHERE, Key.typed(" "), "next page", KeyAction.PAGE_DOWN),
            typed(Name.ENTER, "does what stands on the prompt", KeyAction.ENTER),
            key(
                    When.EMPTY,
                    EVERYWHERE,
                    Key.of(Name.ENTER),
                    "takes the highlighted choice, says yes to the load routine, or shows what can be done",
                    KeyAction.ENTER),
            key(When.QUESTIONED, ANSWERED, Key.typed("y"), "says yes to a question", KeyAction.ANSWER_YES)
                    .like("yes"),
            key(When.QUESTIONED, ANSWERED, Key.typed("n"), "says no to a question", KeyAction.ANSWER_NO)
                    .like("no"),
            key(When.ASKED, SHOOT, Key.typed("n"), "says no to what the load routine asks", KeyAction.DENY)
                    .like("no"),
            shoot(Key.of(Name.TAB), "next camera or back in use", KeyAction.NEXT_CAMERA)
                    .like("cam"),
            shoot(Key.of(Name.SHIFT_TAB), "the one before", KeyAction.CAMERA_BEFORE)
                    .like("cam"),
            typed(Name.TAB, "completes the word", KeyAction.COMPLETE_WORD),
            shoot(Key.of(Name.UP), "choice above", KeyAction.CHOICE_ABOVE),
            shoot(Key.of(Name.DOWN), "choice below", KeyAction.CHOICE_BELOW),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.UP), "line up", KeyAction.LINE_UP),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.DOWN), "line down", KeyAction.LINE_DOWN),
            shoot(Key.ctrl('t'), "counts a frame that is written down later", KeyAction.TALLY)
                    .like("tally"),
            always(Key.ctrl('o'), "takes off filter, tube, bias, hold and flash", KeyAction.CLEAR_WHAT_STAYS_ON)
                    .like("clear"),
            always(Key.ctrl('z'), "undo", KeyAction.UNDO).like("undo"),
            always(Key.ctrl('y'), "redo", KeyAction.REDO).like("redo"),
            always(
                            Key.of(Name.ESCAPE),
                            "clears the prompt, skips the load routine, ends the guide, or goes back",
                            KeyAction.ESCAPE)
                    .like("shoot"),
            key(When.ALWAYS, SHOOT, Key.of(Name.PAGE_UP), "what was cleared or typed before", KeyAction.OLDER_LINE),
            key(When.ALWAYS, SHOOT, Key.of(Name.PAGE_DOWN), "the line after it", KeyAction.NEWER_LINE),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.PAGE_UP), "page up", KeyAction.PAGE_UP),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.PAGE_DOWN), "page down", KeyAction.PAGE_DOWN),
            key(
                    When.EMPTY,
                    HELP,
                    Key.of(Name.LEFT),
                    "folds this part of help to its title, or all parts",
                    KeyAction.FOLD),
            key(When.EMPTY, HELP, Key.of(Name.RIGHT), "unfolds this part, or all parts", KeyAction.UNFOLD),
            key(When.EMPTY, ELSEWHERE, Key.of(Name.HOME), "to the first row", KeyAction.FIRST_ROW),
            key(When.EMPTY, ELSEWHERE, Key.of(Name.END), "to the last row", KeyAction.LAST_ROW),
            key(When.EMPTY, List.of(Page.ACTIONS), Key.of(Name.BACKSPACE), "one step back", KeyAction.STEP_BACK),
            always(Key.of(Name.F1), "help", KeyAction.SHOW_HELP).like("help"),
            key(When.EMPTY, EVERYWHERE, Key.typed("?"), "help", KeyAction.SHOW_HELP)
                    .like("help"),
            always(Key.of(Name.F2), "frames of this roll", KeyAction.SHOW_FRAMES)
                    .like("frames"),
            always(Key.of(Name.F3), "all rolls", KeyAction.SHOW_ROLLS).like("rolls"),
            always(Key.of(Name.F4), "the day's plan", KeyAction.SHOW_PLAN).like("plan"),
            always(Key.of(Name.F5), "film in the bag", KeyAction.SHOW_BAG).like("bag"),
            always(Key.of(Name.F6), "end of the day: where every roll is", KeyAction.SHOW_DAY_END)
                    .like("day-end"),
            always(Key.of(Name.F7), "hands over: the lab order of the finished rolls", KeyAction.SHOW_ORDER)
                    .like("order"),
            always(Key.of(Name.F8), "finds frames in all rolls", KeyAction.SHOW_FOUND)
                    .like("find"),
            always(Key.of(Name.F9), "next theme", KeyAction.NEXT_THEME).like("theme"),
            always(Key.of(Name.F10), "big counter", KeyAction.BIG_COUNTER).like("big"),
            always(Key.ctrl('l'), "paints the screen afresh", KeyAction.REPAINT),
            always(Key.ctrl('c'), "clears the prompt; twice: leaves", KeyAction.LEAVE)
                    .like("quit"),
            edit(Key.of(Name.BACKSPACE), "deletes the character before", KeyAction.ERASE_BEFORE),
            edit(Key.of(Name.DELETE), "deletes the character under the cursor", KeyAction.ERASE_UNDER),
            edit(Key.of(Name.LEFT), "cursor left", KeyAction.CURSOR_LEFT),
            edit(Key.of(Name.RIGHT), "cursor right", KeyAction.CURSOR_RIGHT),
            edit(Key.of(Name.HOME), "to the start of the line", KeyAction.CURSOR_HOME),
            edit(Key.ctrl('a'), "to the start of the line", KeyAction.CURSOR_HOME),
            edit(Key.of(Name.END), "to the end of the line", KeyAction.CURSOR_END),
            edit(Key.ctrl('e'), "to the end of the line", KeyAction.CURSOR_END),
            edit(Key.ctrl('u'), "clears the prompt; PgUp brings it back", KeyAction.CLEAR_PROMPT),
            edit(Key.ctrl('w'), "deletes the word before the cursor", KeyAction.ERASE_WORD));

    private KeyBindings() {}

    /** The binding that takes a key now. */
    static Optional<KeyBinding> of(Key key, Session session) {
        for (KeyBinding binding : ALL) {
            if (binding.key().equals(key) && binding.isHere(session)) {
                return Optional.of(binding);
            }
        }
        return Optional.empty();
    }

    private static List<Page> elsewhere() {
        List<Page> pages = new ArrayList<>(EVERYWHERE);
        pages.remove(Page.SHOOT);
        return List.copyOf(pages);
    }

    private static List<Page> answered() {
        List<Page> pages = new ArrayList<>(EVERYWHERE);
        pages.removeAll(List.of(Page.HELP, Page.ACTIONS));
        return List.copyOf(pages);
    }

    // How the rows of the table are made.

    private static KeyBinding key(When when, List<Page> pages, Key key, String description, KeyAction action) {
        return new KeyBinding(key, description, "", when, pages, action);
    }

    private static KeyBinding always(Key key, String description, KeyAction action) {
        return key(When.ALWAYS, EVERYWHERE, key, description, action);
    }

    private static KeyBinding shoot(Key key, String description, KeyAction action) {
        return key(When.EMPTY, SHOOT, key, description, action);
    }

    private static KeyBinding typed(Name name, String description, KeyAction action) {
        return key(When.TYPED, EVERYWHERE, Key.of(name), description, action);
    }

    private static KeyBinding edit(Key key, String description, KeyAction action) {
        return key(When.TYPED, EVERYWHERE, key, description, action);
    }
}
