package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command of a script, with what is typed into it and what is to be expected.
 *
 * @param sign {@code $} for a command, {@code %} for one that cannot be run again, {@code =} for a file that is put
 *     there by hand
 * @param arguments the command's, or the file's name
 * @param input what is typed, or the file's words; an empty file is one that is taken away
 * @param remarks the exit status and what stands on the other stream, where it is not 0 and silence
 * @param elsewhere the file that holds the same as the answer
 */
record TypedCommand(char sign, List<String> arguments, String input, List<String> remarks, Optional<String> elsewhere) {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /**
     * All commands of a script: a line each, under it {@code >} what is typed, {@code +} the answer to what is asked
     * about the line before by now, {@code !} remarks, {@code @} where the answer lies.
     */
    static List<TypedCommand> of(Path script) throws IOException {
        List<TypedCommand> commands = new ArrayList<>();
        for (String line : Files.readAllLines(script)) {
            if (line.startsWith("$ takeup ") || line.startsWith("% takeup ")) {
                commands.add(
                        new TypedCommand(line.charAt(0), words(line.substring(9)), "", List.of(), Optional.empty()));
            } else if (line.startsWith("= ")) {
                int end = line.indexOf(' ', 2);
                String name = line.substring(2, end < 0 ? line.length() : end);
                commands.add(new TypedCommand(
                        '=',
                        List.of(name),
                        end < 0 ? "" : line.substring(end + 1) + "\n",
                        List.of(),
                        Optional.empty()));
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                commands.add(commands.remove(commands.size() - 1).with(line.charAt(0), line.substring(2)));
            }
        }
        return commands;
    }

    private TypedCommand with(char mark, String text) {
        return switch (mark) {
            case '>', '+' -> new TypedCommand(sign, arguments, input + text + "\n", remarks, elsewhere);
            case '!' ->
                new TypedCommand(
                        sign,
                        arguments,
                        input,
                        Stream.concat(remarks.stream(), Stream.of(text)).toList(),
                        elsewhere);
            case '@' -> new TypedCommand(sign, arguments, input, remarks, Optional.of(text));
            default -> throw new IllegalArgumentException(mark + " " + text);
        };
    }

    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        return words;
    }

    boolean isFile() {
        return sign == '=';
    }

    boolean isRepeatable() {
        return sign == '$';
    }

    /** The file of the answer: the words of the command, without its clock. */
    String fileName() {
        List<String> words = new ArrayList<>(arguments);
        int clock = words.indexOf("--clock");
        if (clock >= 0) {
            words.subList(clock, clock + 2).clear();
        }
        String name = String.join(
                "-", words.stream().map(it -> it.replaceFirst("^-+", "")).toList());
        return name.replaceAll("[^A-Za-z0-9.]+", "-") + ".txt";
    }

    @Override
    public String toString() {
        return sign + " takeup " + String.join(" ", arguments);
    }
}
