package takeup.order;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import takeup.text.TabFields;

/**
 * What an order takes from a roll, as text that is made and read again in great numbers: a line of what the roll is, a
 * line of what the lab should know, a line for each frame.
 */
final class ExposedRollText {
    private static final int FIELDS = 21;

    private ExposedRollText() {}

    static String of(ExposedRoll roll) {
        RollFilm film = roll.film();
        return TabFields.line(
                        roll.roll(),
                        roll.revision(),
                        roll.state(),
                        roll.status().loadedAt(),
                        roll.status().finishedAt(),
                        roll.shoot().date(),
                        roll.shoot().client(),
                        roll.camera().name(),
                        roll.camera().back(),
                        film.filmSize(),
                        film.frameSize(),
                        film.stock(),
                        film.kind(),
                        film.development().process(),
                        film.development().pushStops(),
                        film.development().index(),
                        film.development().boxSpeed(),
                        film.label().name(),
                        film.label().batch(),
                        roll.exposures().expected(),
                        roll.notes().note())
                + "\n"
                + conditions(roll.notes().condition())
                + "\n"
                + FrameLines.of(roll.frames());
    }

    /** The roll again; an IllegalArgumentException where the text is none. */
    static ExposedRoll read(String text) {
        int conditions = text.indexOf('\n') + 1;
        int frames = text.indexOf('\n', conditions) + 1;
        String[] fields = TabFields.values(text.substring(0, conditions - 1), FIELDS);
        return new ExposedRoll(
                fields[0],
                Integer.parseInt(fields[1]),
                new ExposedRoll.Status(
                        fields[2],
                        OffsetDateTime.parse(fields[3]),
                        TabFields.optional(fields[4]).map(OffsetDateTime::parse)),
                new ExposedRoll.Shoot(fields[5], TabFields.optional(fields[6])),
                new ExposedRoll.Body(fields[7], TabFields.optional(fields[8])),
                new RollFilm(
                        fields[9],
                        fields[10],
                        fields[11],
                        fields[12],
                        new LabDevelopment(
                                fields[13],
                                Double.parseDouble(fields[14]),
                                Double.parseDouble(fields[15]),
                                Double.parseDouble(fields[16])),
                        new RollFilm.Label(TabFields.optional(fields[17]), TabFields.optional(fields[18]))),
                new ExposedRoll.Exposures(Integer.parseInt(fields[19]), new FrameLines(text.substring(frames))),
                new LabNotes(conditions(text.substring(conditions, frames - 1)), TabFields.optional(fields[20])));
    }

    /** Each behind a tab. */
    private static String conditions(List<String> conditions) {
        StringBuilder line = new StringBuilder();
        conditions.forEach(it -> line.append('\t').append(TabFields.escaped(it)));
        return line.toString();
    }

    private static List<String> conditions(String line) {
        List<String> conditions = new ArrayList<>(Arrays.asList(line.split("\t", -1)));
        conditions.remove(0);
        conditions.replaceAll(TabFields::unescaped);
        return conditions;
    }
}
