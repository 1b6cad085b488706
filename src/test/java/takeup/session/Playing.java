package takeup.session;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Assertions;
import takeup.ShippedShelf;
import takeup.command.Shooting;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Kit;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.message.StoreEffects;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * A regatta day on the screen, played: keys go in with their times, and a disk of the test's own answers what the model
 * asks of the outside, at once, late, or with a refusal.
 */
public final class Playing {
    private static final Kit KIT = new Kit(new ShippedShelf());
    /** Milliseconds between two keys of somebody who types. */
    private static final int BETWEEN = 150;

    /** How the disk answers. */
    public enum Disk {
        WELL,
        SLOW,
        FULL
    }

    private final Kit kit;
    private final MemoryStore store;
    private final StoreEffects effects;
    private final List<Effect> open = new ArrayList<>();
    private final List<Effect> seen = new ArrayList<>();
    private List<String> farewell = List.of();
    private Disk disk = Disk.WELL;
    private OffsetDateTime now;
    private long ticks = 5_000;
    private Optional<Long> wake = Optional.empty();
    private Session shoot;

    private Playing(Optional<String> readOnly, List<String> problems) {
        this(readOnly, problems, OffsetDateTime.parse("2026-09-12T15:00:00+02:00"));
    }

    private Playing(Optional<String> readOnly, List<String> problems, OffsetDateTime start) {
        this(KIT, readOnly, problems, start);
    }

    private Playing(Kit kit, Optional<String> readOnly, List<String> problems, OffsetDateTime start) {
        this.kit = kit;
        store = new MemoryStore(kit);
        effects = new StoreEffects(store, this::send);
        now = start;
        shoot = Session.begin(
                ShootState.of(kit, List.of(), Optional.empty(), Set.of()),
                new Session.Settings("R", "the data folder", readOnly),
                "dark",
                problems,
                now,
                ticks);
    }

    /** A first start, and these lines typed. */
    public static Playing of(String... lines) {
        return new Playing(Optional.empty(), List.of()).lines(lines);
    }

    /** A first start at another time than three in the afternoon. */
    public static Playing at(String time) {
        return new Playing(Optional.empty(), List.of(), OffsetDateTime.parse(time));
    }

    /** The same with profiles of the photographer's own. */
    public static Playing with(Kit.ProfileSource profiles, String... lines) {
        return new Playing(
                        new Kit(profiles),
                        Optional.empty(),
                        List.of(),
                        OffsetDateTime.parse("2026-09-12T15:00:00+02:00"))
                .lines(lines);
    }

    /** The 645 reflex with a roll of colour negative 400 at EI 200, and these lines typed. */
    public static Playing medium(String... lines) {
        return of("cam 645", "load cn400").lines(lines);
    }

    /** Two cameras with a film in each; the 645 reflex is in hand. */
    public static Playing two(String... lines) {
        return of("cam 35", "load bw400", "cam 645", "load cn400").lines(lines);
    }

    /** The same folder, opened by a second program while the first one has it. */
    public static Playing readOnly() {
        return new Playing(Optional.of("another takeup has the folder open"), List.of());
    }

    /** A start on which something could not be read. */
    public static Playing troubled(String... problems) {
        return new Playing(Optional.empty(), List.of(problems));
    }

    /** The program is ended and started again: only what was written is known, and finished rolls are not read. */
    public Playing restart() {
        return restart(Optional.empty());
    }

    /** As {@link #restart()}, but nothing can be written. */
    public Playing restartReadOnly() {
        return restart(Optional.of("another takeup has the folder open"));
    }

    private Playing restart(Optional<String> readOnly) {
        ShootState all = ShootState.of(kit, written(), Optional.of(now.toLocalDate()), Set.of());
        List<JournalStep> found = new ArrayList<>();
        for (JournalStep step : written()) {
            List<JournalEntry> entries = step.entries().stream()
                    .filter(it -> it instanceof JournalEntry.OnDay
                            || it instanceof JournalEntry.OnRoll onRoll
                                    && all.rolls().get(onRoll.roll()).state() != Roll.State.FINISHED)
                    .toList();
            if (!entries.isEmpty()) {
                found.add(new JournalStep(step.step(), step.at(), entries));
            }
        }
        Optional<LocalDate> date = written().isEmpty()
                ? Optional.empty()
                : Optional.of(written().get(written().size() - 1).at().toLocalDate());
        shoot = Session.begin(
                ShootState.of(kit, found, date, new TreeSet<>(all.known())),
                new Session.Settings("R", "the data folder", readOnly),
                "dark",
                List.of(),
                now,
                ticks);
        open.clear();
        return this;
    }

    // What the photographer does.

    /** Keys, one after the other, as somebody types. */
    public Playing press(Key... keys) {
        for (Key key : keys) {
            pass(BETWEEN);
            send(new Message.Pressed(key, now, ticks));
        }
        return this;
    }

    /** The key that shows a page. */
    public static Key keyTo(Session.Page page) {
        return Key.of(
                switch (page) {
                    case SHOOT -> Key.Name.ESCAPE;
                    case FRAMES -> Key.Name.F2;
                    case ROLLS -> Key.Name.F3;
                    case PLAN -> Key.Name.F4;
                    case BAG -> Key.Name.F5;
                    case DAY_END -> Key.Name.F6;
                    case FIND -> Key.Name.F8;
                    case ORDER -> Key.Name.F7;
                    case HELP -> Key.Name.F1;
                    case ACTIONS -> Key.Name.ENTER;
                });
    }

    /** In a window of that size. */
    Playing in(int columns, int rows) {
        shoot = shoot.in(columns, rows);
        return this;
    }

    public Playing press(Key.Name name) {
        return press(Key.of(name));
    }

    /**
     * A key, so many milliseconds after the last thing that happened; nothing wakes the model in between that is not
     * due.
     */
    public Playing after(int milliseconds, Key key) {
        pass(milliseconds);
        return send(new Message.Pressed(key, now, ticks));
    }

    /** A key that came in one read with others. */
    public Playing burst(Key key) {
        return send(new Message.Pressed(key, now, ticks, Message.Arrival.WITH_OTHERS));
    }

    /** Text on the prompt, letter by letter. */
    public Playing type(String text) {
        text.codePoints().forEach(it -> press(Key.typed(Character.toString(it))));
        return this;
    }

    /** Lines, each typed and entered; where the disk is well each is written before the next. */
    public Playing lines(String... lines) {
        for (String line : lines) {
            type(line).press(Key.Name.ENTER);
        }
        return this;
    }

    public Playing paste(String text) {
        return press(Key.pasted(text));
    }

    /** One Space, alone; a frame if it stands for one. */
    public Playing space() {
        press(Key.typed(" "));
        return pass(100);
    }

    /** Time goes by; the clock ticks once a second, and the model is woken when it asked to be. */
    public Playing pass(long milliseconds) {
        long end = ticks + milliseconds;
        if (wake.isPresent() && wake.get() <= end) {
            ticks = wake.get();
            wake = Optional.empty();
            send(new Message.Ticked(now, ticks));
        }
        now = now.plusNanos((end - ticks) * 1_000_000);
        ticks = end;
        return this;
    }

    public Playing later(int minutes) {
        now = now.plusMinutes(minutes);
        ticks += minutes * 60_000L;
        return send(new Message.Ticked(now, ticks));
    }

    /** The clock is set, and no time goes by. */
    public Playing clockMoved(Duration by) {
        now = now.plus(by);
        return send(new Message.Ticked(now, ticks));
    }

    // What the outside does.

    /** From now on the disk answers so; what it was asked before is answered now, unless it is slow. */
    public Playing disk(Disk how) {
        disk = how;
        answer();
        return this;
    }

    /** The slow disk answers the oldest thing that it was asked. */
    public Playing answerOne() {
        answer(open.remove(0), Disk.WELL);
        return this;
    }

    public Playing send(Message message) {
        Transition step = Update.update(shoot, message);
        shoot = step.session();
        for (Effect effect : step.effects()) {
            seen.add(effect);
            if (effect instanceof Effect.Wake in) {
                wake = Optional.of(ticks + in.milliseconds());
            } else if (effect instanceof Effect.Quit quit) {
                Assertions.assertFalse(quit.lines().isEmpty(), "a farewell says what was saved");
                farewell = quit.lines();
            } else if (!(effect instanceof Effect.Repaint)) {
                open.add(effect);
            }
        }
        answer();
        return this;
    }

    private void answer() {
        while (disk != Disk.SLOW && !open.isEmpty()) {
            answer(open.remove(0), disk);
        }
    }

    private void answer(Effect effect, Disk how) {
        store.full(how == Disk.FULL);
        effects.run(effect);
    }

    /** A roll's own records, as its file holds them. */
    List<JournalStep> stepsOf(RollId roll) {
        return store.stepsOf(roll);
    }

    // What is seen.

    public Session shoot() {
        return shoot;
    }

    public OffsetDateTime now() {
        return now;
    }

    public long ticks() {
        return ticks;
    }

    public String prompt() {
        return shoot.prompt().text();
    }

    /** The data folder that it is played on. */
    MemoryStore store() {
        return store;
    }

    public String said() {
        return shoot.lastAnswer().text();
    }

    public LastAnswer.Tone tone() {
        return shoot.lastAnswer().tone();
    }

    public Session.Page page() {
        return shoot.view().page();
    }

    /** Frames on the roll in hand, as the screen counts them. */
    public int frames() {
        return shoot.shown().rollInHand().map(it -> it.frames().size()).orElse(0);
    }

    /** Frames of all rolls. */
    public int allFrames() {
        return shoot.saved().rolls().values().stream()
                .mapToInt(it -> it.frames().size())
                .sum();
    }

    public Roll roll(String id) {
        return shoot.saved().rolls().get(RollId.parse(id).orElseThrow());
    }

    /** The pair in hand. */
    public String pair() {
        return Shooting.pair(shoot.shown().inHand().setting());
    }

    /** The newest frame's pair. */
    public String framePair() {
        return Shooting.pair(shoot.shown().rollInHand().orElseThrow().newest().orElseThrow());
    }

    String camera() {
        return shoot.shown().placeInHand().map(Object::toString).orElse("none");
    }

    /** What the disk was asked to keep and has not answered yet, or refused. */
    int waiting() {
        return shoot.waiting().size();
    }

    List<JournalStep> written() {
        return store.written();
    }

    /** Everything that was asked of the outside, in order. */
    public List<Effect> seen() {
        return seen;
    }

    /** Forgets what was asked so far, which a long run would pile up. */
    public void forget() {
        seen.clear();
    }

    /** What all that was written adds up to, worked out anew from the first record. */
    public ShootState fromTheFiles() {
        return ShootState.of(
                kit, written(), shoot.saved().lastJournalDate(), shoot.saved().known());
    }

    public boolean isOver() {
        return !farewell.isEmpty();
    }

    public String farewell() {
        return String.join("\n", farewell);
    }
}
