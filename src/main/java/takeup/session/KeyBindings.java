package takeup.session;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.command.Need;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Key.Name;
import takeup.session.KeyBinding.Step;
import takeup.session.KeyBinding.When;
import takeup.session.KeyBinding.WhyNot;
import takeup.session.Session.Page;

/** All keys and what they do: one table, read by {@link Update}, the footer, help and {@code takeup keys}. */
final class KeyBindings {
    private static final List<Page> EVERYWHERE = List.of(Page.values());
    private static final List<Page> SHOOT = List.of(Page.SHOOT);
    private static final List<Page> ELSEWHERE =
            Arrays.stream(Page.values()).filter(it -> it != Page.SHOOT).toList();

    /** More rows than any list has. */
    private static final int FAR = 1_000_000;

    private static final WhyNot NEVER = session -> Optional.empty();
    private static final WhyNot NO_FILM = session -> Need.FILM.missing(session.afterPending());

    /** All of them, the usual ones first. */
    static final List<KeyBinding> ALL = List.of(
            shoot(Key.typed(" "), "same again: one frame", HeldKeyFlow::frame)
                    .like(".")
                    .unless(NO_FILM),
            key(When.EMPTY, ELSEWHERE, Key.typed(" "), "next page", page(1)),
            typed(Name.ENTER, "does what stands on the prompt", KeyBindings::enter),
            key(
                    When.EMPTY,
                    EVERYWHERE,
                    Key.of(Name.ENTER),
                    "takes the highlighted choice, says yes to the load routine, or shows what can be done",
                    KeyBindings::enter),
            shoot(Key.of(Name.TAB), "next camera or back in use", nextCamera(1))
                    .like("cam")
                    .unless(KeyBindings::whyNoOtherCamera),
            shoot(Key.of(Name.SHIFT_TAB), "the one before", nextCamera(-1))
                    .like("cam")
                    .unless(KeyBindings::whyNoOtherCamera),
            typed(Name.TAB, "completes the word", changes(PromptKeys::complete)),
            shoot(Key.of(Name.UP), "choice above", choose(-1)).unless(KeyBindings::whyNoChoice),
            shoot(Key.of(Name.DOWN), "choice below", choose(1)).unless(KeyBindings::whyNoChoice),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.UP), "line up", scroll(-1)),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.DOWN), "line down", scroll(1)),
            shoot(Key.ctrl('t'), "counts a frame that is written down later", HeldKeyFlow::tally)
                    .like("tally")
                    .unless(NO_FILM),
            always(Key.ctrl('o'), "takes off filter, tube, bias, hold and flash", line("clear"))
                    .like("clear")
                    .unless(needs(Need.SOMETHING_ON)),
            always(Key.ctrl('z'), "undo", line("undo")).like("undo").unless(needs(Need.STEP_TO_UNDO)),
            always(Key.ctrl('y'), "redo", line("redo")).like("redo").unless(needs(Need.STEP_TO_REDO)),
            always(
                            Key.of(Name.ESCAPE),
                            "clears the prompt, skips the load routine, ends the guide, or goes back",
                            EscapeKey::escape)
                    .like("shoot"),
            key(When.ALWAYS, SHOOT, Key.of(Name.PAGE_UP), "what was cleared or typed before", recall(1))
                    .unless(KeyBindings::whyNothingOlder),
            key(When.ALWAYS, SHOOT, Key.of(Name.PAGE_DOWN), "the line after it", recall(-1))
                    .unless(KeyBindings::whyNothingNewer),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.PAGE_UP), "page up", page(-1)),
            key(When.ALWAYS, ELSEWHERE, Key.of(Name.PAGE_DOWN), "page down", page(1)),
            key(When.EMPTY, ELSEWHERE, Key.of(Name.HOME), "to the first row", scroll(-FAR)),
            key(When.EMPTY, ELSEWHERE, Key.of(Name.END), "to the last row", scroll(FAR)),
            key(When.EMPTY, List.of(Page.ACTIONS), Key.of(Name.BACKSPACE), "one step back", changes(ActionKeys::erase))
                    .unless(ActionKeys::whyNoStepBack),
            always(Key.of(Name.F1), "help", turnTo(Page.HELP)).like("help"),
            key(When.EMPTY, EVERYWHERE, Key.typed("?"), "help", turnTo(Page.HELP))
                    .like("help"),
            always(Key.of(Name.F2), "frames of this roll", turnTo(Page.FRAMES))
                    .like("frames")
                    .unless(NO_FILM),
            always(Key.of(Name.F3), "all rolls", turnTo(Page.ROLLS)).like("rolls"),
            always(Key.of(Name.F4), "the day's plan", turnTo(Page.PLAN)).like("plan"),
            always(Key.of(Name.F5), "film in the bag", turnTo(Page.BAG)).like("bag"),
            always(Key.of(Name.F6), "end of the day: where every roll is", ShootKeys::endDay)
                    .like("day-end"),
            always(Key.of(Name.F7), "hands over: the lab order of the finished rolls", turnTo(Page.ORDER))
                    .like("order"),
            always(Key.of(Name.F8), "finds frames in all rolls", ShootKeys::find)
                    .like("find"),
            always(Key.of(Name.F9), "next theme", changes(it -> ViewFlow.theme(it, "")))
                    .like("theme"),
            always(Key.of(Name.F10), "big counter", changes(ViewFlow::big)).like("big"),
            always(Key.ctrl('l'), "paints the screen afresh", it -> Transition.to(it, new Effect.Repaint())),
            always(Key.ctrl('c'), "clears the prompt; twice: leaves", QuitFlow::ctrlC)
                    .like("quit"),
            edit(Key.of(Name.BACKSPACE), "deletes the character before", PromptLine::backspace),
            edit(Key.of(Name.DELETE), "deletes the character under the cursor", PromptLine::delete),
            edit(Key.of(Name.LEFT), "cursor left", PromptLine::left),
            edit(Key.of(Name.RIGHT), "cursor right", PromptLine::right),
            edit(Key.of(Name.HOME), "to the start of the line", PromptLine::home),
            edit(Key.ctrl('a'), "to the start of the line", PromptLine::home),
            edit(Key.of(Name.END), "to the end of the line", PromptLine::end),
            edit(Key.ctrl('e'), "to the end of the line", PromptLine::end),
            edit(Key.ctrl('u'), "clears the prompt; PgUp brings it back", PromptLine::cleared),
            edit(Key.ctrl('w'), "deletes the word before the cursor", PromptLine::wordErased));

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

    // How the rows of the table are made.

    private static KeyBinding key(When when, List<Page> pages, Key key, String description, Step step) {
        return new KeyBinding(key, description, "", when, pages, NEVER, step);
    }

    private static KeyBinding always(Key key, String description, Step step) {
        return key(When.ALWAYS, EVERYWHERE, key, description, step);
    }

    private static KeyBinding shoot(Key key, String description, Step step) {
        return key(When.EMPTY, SHOOT, key, description, step);
    }

    private static KeyBinding typed(Name name, String description, Step step) {
        return key(When.TYPED, EVERYWHERE, Key.of(name), description, step);
    }

    private static KeyBinding edit(Key key, String description, UnaryOperator<PromptLine> change) {
        return key(When.TYPED, EVERYWHERE, key, description, changes(it -> PromptKeys.edit(it, change)));
    }

    // Why not now.

    /** As the word of the key needs it; the footer of the first picture does not wait for the table of all words. */
    private static WhyNot needs(Need need) {
        return session -> need.missing(session.afterPending().asOf(session.now()));
    }

    private static Optional<String> whyNoOtherCamera(Session session) {
        return Need.CAMERA
                .missing(session.afterPending())
                .or(() ->
                        session.afterPending().asOf(session.now()).placesInUse().size() < 2
                                ? Optional.of("one camera or back in use today: cam and a key takes up another")
                                : Optional.empty());
    }

    private static Optional<String> whyNoChoice(Session session) {
        return session.choices().isEmpty() && session.picks().rows().isEmpty()
                ? Optional.of("no suggestions yet: load a film, then a reading (m 5.6 125)")
                : Optional.empty();
    }

    private static Optional<String> whyNothingOlder(Session session) {
        if (session.prompt().past().isEmpty()) {
            return Optional.of("nothing was typed yet");
        }
        return session.prompt().isOldest() ? Optional.of("nothing older was typed") : Optional.empty();
    }

    private static Optional<String> whyNothingNewer(Session session) {
        return session.prompt().recall() == 0 ? Optional.of("nothing newer was typed") : Optional.empty();
    }

    // The steps. Each lambda of the table is a class that is made at the start; those that share a method are one.

    private static Step changes(UnaryOperator<Session> change) {
        return session -> Transition.to(change.apply(session));
    }

    private static Step line(String word) {
        return session -> LineFlow.take(session, word);
    }

    private static Step turnTo(Page page) {
        return session -> ViewFlow.turnTo(session, page);
    }

    private static Step nextCamera(int way) {
        return session -> ShootKeys.nextCamera(session, way);
    }

    private static Step choose(int way) {
        return changes(session -> ShootKeys.choose(session, way));
    }

    private static Step recall(int way) {
        return changes(session -> PromptKeys.edit(session, it -> it.recalled(way)));
    }

    private static Step page(int way) {
        return changes(session -> switch (session.view().page()) {
            case BAG, DAY_END, ORDER -> ViewFlow.scroll(session, way * ViewFlow.PAGE_LINES);
            default -> scrolled(session, way * ViewFlow.PAGE_LINES);
        });
    }

    /** In help, in the actions and where rows can be picked the highlight moves, and the list follows it. */
    private static Step scroll(int lines) {
        return changes(session -> scrolled(session, lines));
    }

    private static Session scrolled(Session session, int lines) {
        if (session.view().menu().isPresent()) {
            return ActionKeys.move(session, lines);
        }
        if (session.view().page() == Page.HELP) {
            return HelpKeys.highlight(session, lines);
        }
        return ActionKeys.rows(session) > 0 ? ActionKeys.highlight(session, lines) : ViewFlow.scroll(session, lines);
    }

    private static Transition enter(Session session) {
        return session.view().menu().isPresent() && session.prompt().isEmpty()
                ? ActionKeys.enter(session)
                : HelpKeys.enter(session).orElseGet(() -> EnterKey.enter(session));
    }
}
