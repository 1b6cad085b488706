package takeup.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.journal.Archive;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** The exports of finished rolls, to find those that are behind their roll: an older revision, or none at all. */
public final class RollExports {
    private static final long LARGEST = 1 << 24;
    /** The revision is one of the first fields of an export. */
    private static final int HEAD = 400;

    private static final Pattern REVISION =
            Pattern.compile("\"format\"\\s*:\\s*\"takeup-roll\".*\"revision\"\\s*:\\s*(\\d{1,9})\\D", Pattern.DOTALL);

    private RollExports() {}

    /**
     * Why a finished roll's export must be written anew, behind the name of the file; empty where it need not, or where
     * what lies there is no export and is left alone.
     */
    public static Optional<String> whyBehind(Archive archive, Roll roll) {
        Path file = archive.export(roll.id());
        String name = "exports/" + file.getFileName();
        try {
            OptionalInt revision = revision(InputFile.own(file, LARGEST));
            return revision.isPresent() && revision.getAsInt() < roll.revision()
                    ? Optional.of(
                            name + " is behind its roll: revision " + revision.getAsInt() + " of " + roll.revision())
                    : Optional.empty();
        } catch (IOException e) {
            return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Optional.empty() : Optional.of(name + " is missing");
        }
    }

    private static OptionalInt revision(String text) {
        Matcher found = REVISION.matcher(text.substring(0, Math.min(HEAD, text.length())));
        return found.find() ? OptionalInt.of(Integer.parseInt(found.group(1))) : OptionalInt.empty();
    }

    /**
     * The finished rolls whose export may be behind, by the times of the two files: an export is written after the
     * record that it follows. Two looks at each roll, so that an archive of years takes no time worth speaking of.
     */
    static List<RollId> suspects(Archive archive) throws IOException {
        List<RollId> suspects = new ArrayList<>();
        for (RollId id : archive.finishedRolls()) {
            if (id.letters().equals(archive.writer()) && isSuspect(archive, id)) {
                suspects.add(id);
            }
        }
        return suspects;
    }

    private static boolean isSuspect(Archive archive, RollId id) {
        try {
            return Files.getLastModifiedTime(archive.export(id), LinkOption.NOFOLLOW_LINKS)
                            .compareTo(Files.getLastModifiedTime(archive.finished(id), LinkOption.NOFOLLOW_LINKS))
                    <= 0;
        } catch (NoSuchFileException e) {
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
