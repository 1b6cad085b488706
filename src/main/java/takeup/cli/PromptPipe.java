package takeup.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.StepFiles;
import takeup.history.ShootState;
import takeup.json.DecimalFields;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Warning;
import takeup.session.PromptSession;

/** The prompt as a pipe: lines in, one answer each, after what it logged is safe on disk. */
final class PromptPipe {
    /** How answers are given: a line of text each, or a line of JSON each. */
    enum Format {
        TEXT,
        JSON
    }

    private static final int LONGEST = 1 << 20;

    private final PromptSession session;
    private final Clock clock;
    private final Console out;
    private final Format format;
    private boolean isIncomplete;

    PromptPipe(JournalStore disk, ShootState situation, Clock clock, Console out, Format format) {
        StepFiles files = new StepFiles(disk.archive(), Optional.of(disk));
        this.session = new PromptSession(situation, files, disk.archive().writer(), clock.now(), clock.ticks());
        this.clock = clock;
        this.out = out;
        this.format = format;
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
        return isIncomplete || out.failed() ? 1 : 0;
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
        PromptSession.Reply reply = session.read(line, clock.now(), clock.ticks());
        reply.remarks().forEach(out::error);
        boolean goesOn = say(reply.outcome());
        session.remarks().forEach(out::error);
        reply.exportError().ifPresent(why -> {
            isIncomplete = true;
            out.error("the export could not be written: " + why + "; it is tried again at the next start");
        });
        return goesOn;
    }

    /** Says what a line came to; whether the next one is read. */
    private boolean say(Outcome outcome) {
        if (outcome instanceof Outcome.Rejected rejected) {
            refuse(rejected.why());
        } else if (outcome instanceof Outcome.NeedsConfirmation asked) {
            say(new Outcome.Answer("question", asked.question(), Json.object(), List.of()));
        } else if (outcome instanceof Outcome.Accepted accepted) {
            say(accepted.answer(), accepted.thenAsks().map(Outcome.NeedsConfirmation::question));
            return !accepted.isQuit();
        }
        return true;
    }

    private void say(Outcome.Answer answer) {
        say(answer, Optional.empty());
    }

    /** Says an answer, and in the same line what is asked behind it. */
    private void say(Outcome.Answer answer, Optional<String> question) {
        if (format == Format.JSON) {
            Json.Obj object = Json.object().and("ok", true).and("event", answer.event());
            answer.fields().json().fields().forEach(object::and);
            question.ifPresent(it -> object.and("question", it));
            out.raw(JsonText.line(DecimalFields.in(object.and("text", answer.text())
                            .and(
                                    "warnings",
                                    answer.warnings().stream()
                                            .map(Warning::json)
                                            .toList())))
                    + "\n");
        } else {
            boolean isAsked = answer.event().equals("question");
            StringBuilder words = new StringBuilder(isAsked ? "Question: " : "")
                    .append(answer.text())
                    .append(isAsked && !answer.text().endsWith("y/n") ? "." : "");
            for (Warning warning : answer.warnings()) {
                boolean isInText = answer.text().contains(warning.text());
                words.append(" Warning, ")
                        .append(warning.code())
                        .append(isInText ? "" : ": " + warning.text())
                        .append('.');
            }
            question.ifPresent(it -> words.append(" Question: ").append(it));
            out.line(words.toString());
        }
    }

    private void refuse(String why) {
        isIncomplete = true;
        if (format == Format.JSON) {
            out.raw(JsonText.line(Json.object().and("ok", false).and("error", why)) + "\n");
        } else {
            out.line("Not done: " + why + ".");
        }
    }
}
