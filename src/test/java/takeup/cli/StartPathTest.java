package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.console.Console;
import takeup.files.Settings;
import takeup.grid.Theme;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/** What is loaded until the first picture stands, and with the first key: each class of it delays the start. */
class StartPathTest {
    /** Our own classes until the first picture; the words of the prompt come with the first key. */
    private static final int MOST = 234;
    /** All of them, those of Java and of the libraries too, which Java brings in as it needs them. */
    private static final int MOST_IN_ALL = 690;

    @TempDir
    Path scratch;

    @Test
    void theFirstPictureAndTheFirstKeyNeedNoMoreThanTheyDid() throws Exception {
        List<String> first = loaded("");
        List<String> own = first.stream()
                .filter(it -> it.startsWith("takeup.") && !it.contains("$$") && !it.contains("StartPathTest"))
                .toList();
        Map<String, Long> rooms = own.stream()
                .collect(Collectors.groupingBy(it -> it.split("\\.")[1], TreeMap::new, Collectors.counting()));
        assertTrue(own.size() > 100, first.toString());
        assertEquals(List.of(), lambdasBeforeTheFirstPicture(first));
        assertTrue(own.size() <= MOST, own.size() + " classes until the first picture: " + rooms);
        List<String> all = first.subList(first.indexOf(StartPathTest.class.getName()), firstMessage(first));
        assertTrue(all.size() <= MOST_IN_ALL, all.size() + " classes in all: " + all);
        assertEquals(List.of(), unwanted(first, "takeup.dispatch.CommandTable"));
        assertEquals(List.of(), unwanted(first, "picocli."));
        assertEquals(List.of(), unwanted(first, "java.util.Comparator$$Lambda"));
        List<String> key = loaded("c");
        assertTrue(key.contains("takeup.dispatch.CommandTable"), "no key was pressed");
        assertEquals(List.of(), unwanted(key, "java.lang.runtime.ObjectMethods"));
    }

    @Test
    void aStartInTheMiddleOfARollComparesNoRecordsEither() throws Exception {
        List<String> first = loadedAfter("film", "cam 645\nload cn400\nm 5.6 125\n.\n.\n");
        assertTrue(first.contains("takeup.kit.Suggestions"), "no advice was shown");
    }

    /** A shoot with a place, a plan, a bag, flash, a filter, notes and people, on two cameras. */
    @Test
    void norDoesAStartInTheMiddleOfAPlannedDay() throws Exception {
        List<String> first = loadedAfter("plan", """
                bag add 4 cn400 120 price 6.20
                shoot Regatta for Rowing Club at 59.33,18.07
                plan 23:58 Prize-giving wants 12 must
                plan 23:59 Crew portraits wants 8 cam 645
                cam 645
                load cn400
                m 5.6 125
                filter yellow
                . ; bow seat
                with Ada, Bo
                flash 8
                .
                cam 35
                load bw400
                m 8 60
                .
                .
                """);
        assertTrue(first.contains("takeup.advice.FilmBudget"), "no plan was looked at");
    }

    /** What is loaded until the first picture of a folder in which these lines were typed. */
    private List<String> loadedAfter(String name, String lines) throws Exception {
        Path folder = scratch.resolve("data" + name);
        for (String profile : List.of("cameras/645", "cameras/35", "stocks/cn400", "stocks/bw400")) {
            Path copy = folder.resolve("profiles").resolve(profile + ".json");
            Files.createDirectories(copy.getParent());
            Files.copy(Path.of("profiles").resolve(profile + ".json"), copy);
        }
        Installed.Ended typed = InProcess.run(lines, List.of("line", "--data", folder.toString()));
        assertEquals(0, typed.status(), typed.toString());
        List<String> first = loaded(name, "");
        assertEquals(List.of(), lambdasBeforeTheFirstPicture(first));
        assertEquals(List.of(), unwanted(first, "java.lang.runtime.ObjectMethods"));
        assertEquals(List.of(), unwanted(first, "java.util.Comparator$$Lambda"));
        return first;
    }

    /** The very first takes 5 ms, since Java makes ready what makes them, and starting a process takes 15. */
    private static List<String> lambdasBeforeTheFirstPicture(List<String> loaded) {
        return loaded.subList(0, firstMessage(loaded)).stream()
                .filter(it -> it.contains("$$Lambda") || it.equals("java.lang.ProcessBuilder"))
                .toList();
    }

    private static int firstMessage(List<String> loaded) {
        int at = loaded.indexOf("takeup.session.Update");
        assertTrue(at > 0, "the loop took no message");
        return at;
    }

    private static List<String> unwanted(List<String> loaded, String name) {
        return loaded.stream().filter(it -> it.startsWith(name)).toList();
    }

    private List<String> loaded(String keys) throws Exception {
        return loaded(keys, keys);
    }

    private List<String> loaded(String folder, String keys) throws Exception {
        Path log = scratch.resolve("loaded" + folder);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + log,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        StartPathTest.class.getName(),
                        scratch.resolve("data" + folder).toString(),
                        keys)
                .inheritIO()
                .start();
        assertEquals(0, process.waitFor());
        return Files.readAllLines(log).stream()
                .map(it -> it.replaceFirst("^(\\[.*?\\])+ ?", "").split(" ")[0])
                .toList();
    }

    /** The screen on a first start, where nobody sees it; the keys come once it stands, and then the terminal goes. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        InputStream keys = new InputStream() {
            private int at;

            @Override
            public int read() throws IOException {
                try {
                    Thread.sleep(1200);
                } catch (InterruptedException e) {
                    throw new InterruptedIOException("the keys were interrupted");
                }
                return at < arguments[1].length() ? arguments[1].charAt(at++) : -1;
            }

            /** One at a time: each is drawn before the next, or the end, comes. */
            @Override
            public int read(byte[] bytes, int offset, int length) throws IOException {
                int key = read();
                if (key >= 0) {
                    bytes[offset] = (byte) key;
                }
                return key >= 0 ? 1 : -1;
            }
        };
        Terminal terminal = Terminal.withoutScreen(
                keys,
                TerminalEnvironment.of(Map.of("TERM", "xterm-256color", "LANG", "C.UTF-8"), false),
                Theme.named("dark").orElseThrow());
        Console console = new Console(System.out, System.err, Map.of());
        System.exit(new ScreenCommand(folder, Settings.of(folder), console).run(terminal, "dark"));
    }
}
