package takeup;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The map of rooms, compared with the code: a stray use of one room by another fails the build by name. */
class RoomsTest {

    /** Each room and the rooms next to it that it looks into; what those look into, it sees too. */
    private static final Map<String, Set<String>> LOOKS_INTO = Map.ofEntries(
            Map.entry("text", Set.of()),
            Map.entry("json", Set.of("text")),
            Map.entry("disk", Set.of()),
            Map.entry("exposure", Set.of("json")),
            Map.entry("kit", Set.of("exposure")),
            Map.entry("roll", Set.of("kit")),
            Map.entry("day", Set.of("roll")),
            Map.entry("handoff", Set.of("roll")),
            Map.entry("order", Set.of("json")),
            Map.entry("scans", Set.of("roll")),
            Map.entry("review", Set.of("scans")),
            Map.entry("records", Set.of("day", "review")),
            Map.entry("journal", Set.of("records", "disk")),
            Map.entry("prompt", Set.of("day")),
            Map.entry("history", Set.of("prompt")),
            Map.entry("advice", Set.of("history", "review")),
            Map.entry("report", Set.of("advice")),
            Map.entry("search", Set.of("report")),
            Map.entry("command", Set.of("search")),
            Map.entry("metering", Set.of("command")),
            Map.entry("planning", Set.of("command")),
            Map.entry("loading", Set.of("planning")),
            Map.entry("framing", Set.of("loading")),
            Map.entry("dispatch", Set.of("framing", "metering")),
            Map.entry("action", Set.of("dispatch")),
            Map.entry("drafting", Set.of("action", "order")),
            Map.entry("message", Set.of("drafting")),
            Map.entry("session", Set.of("message")),
            Map.entry("grid", Set.of("text")),
            Map.entry("lettering", Set.of("grid", "scans")),
            Map.entry("panel", Set.of("session", "lettering")),
            Map.entry("screen", Set.of("panel")),
            Map.entry("scanview", Set.of("screen")),
            Map.entry("terminal", Set.of("message", "grid")),
            Map.entry("console", Set.of("terminal", "journal")),
            Map.entry("index", Set.of("journal", "search")),
            Map.entry("files", Set.of("console", "handoff", "order", "index")),
            Map.entry("shell", Set.of("files", "session")),
            Map.entry("options", Set.of("files")),
            Map.entry("ordering", Set.of("options")),
            Map.entry("profiles", Set.of("options")),
            Map.entry("reviewing", Set.of("options", "scanview")),
            Map.entry("demo", Set.of("reviewing")),
            Map.entry("cli", Set.of("ordering", "profiles", "demo", "shell")));

    /**
     * The largest knot, classes that all need each other, that a room may hold: more, and none of them can be read
     * alone.
     */
    private static final int LARGEST_KNOT = 4;

    private static final Set<String> CLOCKS = Set.of(
            "java.time.Instant",
            "java.time.LocalDate",
            "java.time.LocalTime",
            "java.time.LocalDateTime",
            "java.time.OffsetDateTime",
            "java.time.ZonedDateTime",
            "java.time.Year",
            "java.time.YearMonth");

    private static JavaClasses house;

    @BeforeAll
    static void readTheHouse() {
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        house = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("takeup");
        assertFalse(house.isEmpty(), "no class of takeup was found");
    }

    static List<String> rooms() {
        return LOOKS_INTO.keySet().stream().sorted().toList();
    }

    @ParameterizedTest(name = "{0} looks only into the rooms that the map allows")
    @MethodSource("rooms")
    void aRoomLooksOnlyWhereTheMapAllows(String room) {
        Set<String> seen = seenFrom(room);
        List<String> stray = new ArrayList<>();
        uses().forEach((from, all) -> all.forEach(to -> {
            boolean isAllowed = room(from).equals(room(to)) || seen.contains(room(to));
            if (room(from).equals(room) && !isAllowed) {
                stray.add(from + " -> " + to);
            }
        }));
        assertEquals(List.of(), stray);
    }

    @ParameterizedTest(name = "no more than four classes of {0} all need each other")
    @MethodSource("rooms")
    void aRoomHoldsNoLargeKnot(String room) {
        Map<String, Set<String>> inside = new TreeMap<>();
        uses().forEach((from, all) -> {
            if (room(from).equals(room)) {
                inside.put(
                        from, all.stream().filter(it -> room(it).equals(room)).collect(toCollection(TreeSet::new)));
            }
        });
        List<Set<String>> large =
                Knots.of(inside).stream().filter(it -> it.size() > LARGEST_KNOT).toList();
        assertEquals(List.of(), large);
    }

    /**
     * What a room shows to the others is written down in {@code rooms.txt}, a line a room: a class that is used from
     * outside for the first time is a decision, and a class that nobody outside needs any more is taken off the list.
     */
    @ParameterizedTest(name = "what {0} shows to other rooms is named")
    @MethodSource("rooms")
    void whatARoomShowsIsNamed(String room) throws IOException {
        Set<String> shown = new TreeSet<>();
        uses().forEach((from, all) -> all.stream()
                .filter(to -> room(to).equals(room) && !room(from).equals(room))
                .forEach(to -> shown.add(to.substring(room.length() + 1))));
        try (InputStream file = RoomsTest.class.getResourceAsStream("/rooms.txt")) {
            String named = new String(file.readAllBytes(), UTF_8)
                    .lines()
                    .filter(it -> it.startsWith(room + ":"))
                    .findFirst()
                    .orElse(room + ":");
            assertEquals(named, (room + ": " + String.join(" ", shown)).strip());
        }
    }

    /** What each class uses, by name without {@code takeup.}; a nested class counts with the one that it stands in. */
    private static Map<String, Set<String>> uses() {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass from : house) {
            Set<String> all = uses.computeIfAbsent(shortName(from), it -> new TreeSet<>());
            for (Dependency use : from.getDirectDependenciesFromSelf()) {
                String to =
                        use.getTargetClass().getBaseComponentType().getName().startsWith("takeup.")
                                ? shortName(use.getTargetClass().getBaseComponentType())
                                : shortName(from);
                if (!to.equals(shortName(from))) {
                    all.add(to);
                }
            }
        }
        return uses;
    }

    private static String shortName(JavaClass of) {
        return outermost(of).getName().substring("takeup.".length());
    }

    private static JavaClass outermost(JavaClass of) {
        JavaClass outermost = of;
        while (outermost.getEnclosingClass().isPresent()) {
            outermost = outermost.getEnclosingClass().get();
        }
        return outermost;
    }

    private static String room(String shortName) {
        return shortName.substring(0, shortName.indexOf('.'));
    }

    @Test
    void everyClassLivesInARoomOfTheMap() {
        check(classes()
                .should()
                .resideInAnyPackage(rooms().stream().map(RoomsTest::inside).toArray(String[]::new)));
    }

    @Test
    void jacksonIsSeenWhereJsonIsReadAndWrittenOnly() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("takeup.json..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.fasterxml.."));
    }

    @Test
    void lanternaIsSeenInThreeClassesOfTerminalOnly() {
        Set<String> doors =
                Set.of("takeup.terminal.KeyThread", "takeup.terminal.Keyboard", "takeup.terminal.KeyPatterns");
        check(noClasses()
                .that(outermostIsNot("KeyThread, Keyboard or KeyPatterns", it -> doors.contains(it.getName())))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.googlecode.lanterna.."));
    }

    @Test
    void picocliIsSeenWhereTheCommandLineIsReadOnly() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages(
                        "takeup.options..",
                        "takeup.ordering..",
                        "takeup.profiles..",
                        "takeup.reviewing..",
                        "takeup.cli..",
                        "takeup.shell..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli.."));
    }

    @Test
    void theLibraryOfTheSunIsSeenInOneClassOfDayOnly() {
        check(noClasses()
                .that(outermostIsNot("Sun", it -> it.getName().equals("takeup.day.Sun")))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.shredzone.."));
    }

    @Test
    void librariesForTheWeeksAfterAreSeenWhereTheyAreNeededOnly() {
        check(noClasses()
                .that(outermostIsNot("Sidecar", it -> it.getName().equals("takeup.handoff.Sidecar")))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.adobe.."));
        check(noClasses()
                .that()
                .resideOutsideOfPackage("takeup.review..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.."));
        Set<String> exif = Set.of("takeup.files.ExifFile", "takeup.files.ScanDate");
        check(noClasses()
                .that(outermostIsNot("ExifFile or ScanDate", it -> exif.contains(it.getName())))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.drew.."));
        Set<String> codes = Set.of("takeup.scans.QrCode", "takeup.scans.QrReader");
        check(noClasses()
                .that(outermostIsNot("QrCode or QrReader", it -> codes.contains(it.getName())))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.google.."));
        check(noClasses()
                .that(outermostIsNot("PictureFile", it -> it.getName().equals("takeup.files.PictureFile")))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.imageio.."));
    }

    @Test
    void nothingOpensASocket() {
        check(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.nio\\.channels\\..*(Socket|Datagram).*"));
    }

    /** A {@link takeup.console.Console} is made of the two streams themselves. */
    @Test
    void nothingWritesPastTheConsole() {
        check(noClasses()
                .should()
                .accessTargetWhere(
                        target("System.out or System.err is used", it -> is(it, "java.lang.System", "out", "err"))));
    }

    @Test
    void onlyConsoleAndFilesReadTheClock() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages("takeup.console..", "takeup.files..")
                .should()
                .accessTargetWhere(target(
                        "the clock is read",
                        it -> is(it, "java.lang.System", "currentTimeMillis")
                                || is(
                                        it,
                                        "java.time.Clock",
                                        "system",
                                        "systemUTC",
                                        "systemDefaultZone",
                                        "tickMillis",
                                        "tickSeconds",
                                        "tickMinutes")
                                || is(it, "java.util.Date", "<init>")
                                || is(it, "java.util.Calendar", "getInstance")
                                || CLOCKS.contains(it.getOwner().getName())
                                        && it.getName().equals("now"))));
    }

    @Test
    void thePureRoomsDoNotCountElapsedTime() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages("takeup.cli..", "takeup.console..", "takeup.files..", "takeup.terminal..")
                .should()
                .accessTargetWhere(target("System.nanoTime is read", it -> is(it, "java.lang.System", "nanoTime"))));
    }

    @Test
    void thePureRoomsKnowNoFiles() {
        check(noClasses()
                .that()
                .resideInAnyPackage(
                        "takeup.text..",
                        "takeup.exposure..",
                        "takeup.roll..",
                        "takeup.day..",
                        "takeup.scans..",
                        "takeup.review..",
                        "takeup.prompt..",
                        "takeup.history..",
                        "takeup.advice..",
                        "takeup.report..",
                        "takeup.command..",
                        "takeup.framing..",
                        "takeup.metering..",
                        "takeup.loading..",
                        "takeup.planning..",
                        "takeup.dispatch..",
                        "takeup.action..",
                        "takeup.drafting..",
                        "takeup.message..",
                        "takeup.session..",
                        "takeup.panel..",
                        "takeup.screen..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio.file.."));
    }

    @Test
    void kitIsHandedTextAndOpensNoFile() {
        Set<String> textOnly = Set.of(
                "java.io.IOException", "java.io.UncheckedIOException", "java.io.StringReader", "java.io.StringWriter");
        check(noClasses()
                .that()
                .resideInAPackage("takeup.kit..")
                .should()
                .dependOnClassesThat(describe(
                        "belong to files",
                        it -> it.getPackageName().startsWith("java.nio.file")
                                || it.getPackageName().equals("java.io") && !textOnly.contains(it.getName()))));
    }

    @Test
    void textMeetsNumbersAndCaseWithALocaleOnly() {
        check(noClasses()
                .should()
                .accessTargetWhere(target("the locale of the machine decides", RoomsTest::asksTheMachinesLocale)));
    }

    private static boolean asksTheMachinesLocale(AccessTarget target) {
        boolean mayTakeOne = is(target, "java.lang.String", "format", "formatted", "toLowerCase", "toUpperCase")
                || is(target, "java.io.PrintStream", "printf", "format")
                || is(target, "java.io.PrintWriter", "printf", "format")
                || is(
                        target,
                        "java.time.format.DateTimeFormatter",
                        "ofPattern",
                        "ofLocalizedDate",
                        "ofLocalizedTime",
                        "ofLocalizedDateTime");
        return mayTakeOne
                && target instanceof AccessTarget.CodeUnitAccessTarget code
                && code.getRawParameterTypes().stream()
                        .noneMatch(it -> it.getName().equals("java.util.Locale"));
    }

    private static Set<String> seenFrom(String room) {
        Set<String> seen = new LinkedHashSet<>();
        for (String next : LOOKS_INTO.get(room)) {
            seen.add(next);
            seen.addAll(seenFrom(next));
        }
        return seen;
    }

    private static String inside(String room) {
        return "takeup." + room + "..";
    }

    private static boolean is(AccessTarget target, String owner, String... names) {
        return target.getOwner().getName().equals(owner) && List.of(names).contains(target.getName());
    }

    private static DescribedPredicate<JavaAccess<?>> target(String description, Predicate<AccessTarget> wanted) {
        return describe(description, it -> wanted.test(it.getTarget()));
    }

    /** A nested class counts as the file that it stands in. */
    private static DescribedPredicate<JavaClass> outermostIsNot(String description, Predicate<JavaClass> excepted) {
        return describe("are not of " + description, it -> !excepted.test(outermost(it)));
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(house);
    }
}
