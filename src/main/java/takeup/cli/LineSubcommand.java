package takeup.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.dispatch.Dispatcher;
import takeup.files.JournalStore;
import takeup.files.StartupState;
import takeup.history.ClockShiftDetector;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.journal.JournalRecords;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Warning;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/** The prompt as a pipe: lines in, one answer each, after what it logged is safe on disk. */
final class LineSubcommand {
    private static final int LONGEST = 1 << 20;

    private final JournalStore disk;
    private final Clock clock;
    private final Console out;
    private final String letters;
    private final boolean json;
    private ShootState situation;
    private Optional<Outcome.NeedsConfirmation> question = Optional.empty();
    private boolean notDone;
    private OffsetDateTime seen;
    private long seenTicks;
    private long drift;

    LineSubcommand(JournalStore disk, ShootState situation, Clock clock, Console out, boolean json) {
        this.disk = disk;
        this.situation = situation;
        this.clock = clock;
        this.out = out;
        this.json = json;
        this.letters = disk.archive().writer();
        this.seen = clock.now();
        this.seenTicks = clock.ticks();
    }

    /** Looks at both clocks: whether the time of day was moved is known from one line to the next. */
    private void look() {
        OffsetDateTime now = clock.now();
        long ticks = clock.ticks();
        drift += ClockShiftDetector.jump(seen, seenTicks, now, ticks);
        seen = now;
        seenTicks = ticks;
    }

    /**
     * Reads all lines; 0 at the end of the input, 1 if a line was refused, or an export or an answer could not be
     * written.
     */
    int run(InputStream in) throws IOException {
        BufferedInputStream input = new BufferedInputStream(in);
        boolean going = true;
        while (going && !out.failed()) {
            Optional<byte[]> bytes = next(input);
            going = bytes.isPresent() && line(bytes.get());
        }
        return notDone || out.failed() ? 1 : 0;
    }

    private static Optional<byte[]> next(InputStream in) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int read = in.read();
        if (read < 0) {
            return Optional.empty();
        }
        for (; read >= 0 && read != '\n'; read = in.read()) {
            if (line.size() < LONGEST) {
                line.write(read);
            }
        }
        return Optional.of(line.toByteArray());
    }

    private boolean line(byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            refuse("this line is not UTF-8");
            return true;
        }
        // Editors of some systems begin a file with a byte order mark.
        String typed = text.startsWith("\ufeff") ? text.substring(1) : text;
        String line = typed.strip();
        if (line.isEmpty() || typed.charAt(0) == '#') {
            return true;
        }
        return answer(line);
    }

    private boolean answer(String line) {
        if (line.toLowerCase(Locale.ROOT).startsWith("clock ") || line.equalsIgnoreCase("clock")) {
            try {
                say(new Outcome.Answer("state", clock.move(line.substring(5)), Json.object(), List.of()));
            } catch (IllegalArgumentException e) {
                refuse(e.getMessage());
            }
            return true;
        }
        Outcome outcome;
        look();
        Optional<Outcome.Accepted> answered = question.flatMap(it -> it.answer(line, situation));
        if (answered.isPresent()) {
            outcome = answered.get();
        } else {
            outcome = Dispatcher.read(situation, line, seen, drift, letters);
            Optional<RollId> before = Optional.empty();
            while (outcome instanceof Outcome.NeedsRoll needs && !before.equals(Optional.of(needs.roll()))) {
                before = Optional.of(needs.roll());
                fetch(needs.roll());
                outcome = Dispatcher.read(situation, line, seen, drift, letters);
            }
        }
        question = Optional.empty();
        if (outcome instanceof Outcome.Rejected why) {
            refuse(why.why());
        } else if (outcome instanceof Outcome.NeedsRoll needs) {
            refuse(needs.roll() + " cannot be read: takeup check says why");
        } else if (outcome instanceof Outcome.NeedsConfirmation asked) {
            question = Optional.of(asked);
            say(new Outcome.Answer("question", asked.question(), Json.object(), List.of()));
        } else {
            return does((Outcome.Accepted) outcome);
        }
        return true;
    }

    private boolean does(Outcome.Accepted does) {
        if (!does.entries().isEmpty()) {
            JournalStep step = new JournalStep(situation.nextStep(), seen, does.entries());
            try {
                disk.keep(step);
            } catch (IOException e) {
                refuse("NOT SAVED: " + IoErrorText.words(e));
                return true;
            }
            disk.remarks().forEach(out::error);
            situation = situation.and(step);
            drift = step.isFrameOrReading() ? 0 : drift;
            try {
                disk.settle(does.export().stream()
                        .map(it -> situation.rolls().get(it))
                        .toList());
            } catch (IOException e) {
                notDone = true;
                say(does.answer());
                out.error("the export could not be written: " + IoErrorText.words(e)
                        + "; it is tried again at the next start");
                return true;
            }
        }
        say(does.answer());
        return !does.isQuit();
    }

    private void fetch(RollId id) {
        JournalRecords<RollRecord> opened = disk.archive().roll(id);
        opened.problems().forEach(out::error);
        situation = situation.with(StartupState.steps(id, opened.records()));
    }

    private void say(Outcome.Answer answer) {
        if (json) {
            Json.Obj object = Json.object().and("ok", true).and("event", answer.event());
            answer.fields().fields().forEach(object::and);
            out.raw(JsonText.line(object.and("text", answer.text())
                            .and(
                                    "warnings",
                                    answer.warnings().stream()
                                            .map(Warning::json)
                                            .toList()))
                    + "\n");
        } else {
            boolean isAsked = answer.event().equals("question");
            StringBuilder words = new StringBuilder(isAsked ? "Question: " : "")
                    .append(answer.text())
                    .append(isAsked ? "." : "");
            for (Warning warning : answer.warnings()) {
                boolean isSaid = answer.text().contains(warning.text());
                words.append(" Warning, ")
                        .append(warning.code())
                        .append(isSaid ? "" : ": " + warning.text())
                        .append('.');
            }
            out.line(words.toString());
        }
    }

    private void refuse(String why) {
        notDone = true;
        if (json) {
            out.raw(JsonText.line(Json.object().and("ok", false).and("error", why)) + "\n");
        } else {
            out.line("Not done: " + why + ".");
        }
    }
}
