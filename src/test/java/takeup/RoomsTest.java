package takeup;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The map of rooms, compared with the code: a stray use of one room by another fails the build by name. */
class RoomsTest {

    /** Each room and the rooms next to it that it looks into; what those look into, it sees too. */
    private static final Map<String, Set<String>> LOOKS_INTO = Map.ofEntries(
            Map.entry("exposure", Set.of()),
            Map.entry("kit", Set.of("exposure")),
            Map.entry("roll", Set.of("kit")),
            Map.entry("handoff", Set.of("roll")),
            Map.entry("day", Set.of("roll")),
            Map.entry("review", Set.of("roll")),
            Map.entry("journal", Set.of("roll", "day", "review")),
            Map.entry("shoot", Set.of("roll", "day", "review")),
            Map.entry("screen", Set.of("shoot")),
            Map.entry("order", Set.of()),
            Map.entry("cli", Set.of("screen", "journal", "handoff", "order")));

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
        String[] shut = rooms().stream()
                .filter(it -> !it.equals(room) && !seen.contains(it))
                .map(RoomsTest::inside)
                .toArray(String[]::new);
        check(noClasses()
                .that()
                .resideInAPackage(inside(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(shut));
    }

    @Test
    void everyClassLivesInARoomOfTheMap() {
        check(classes()
                .should()
                .resideInAnyPackage(rooms().stream().map(RoomsTest::inside).toArray(String[]::new)));
    }

    @Test
    void jacksonIsSeenOnlyWhereTextBecomesRecordsAndBack() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages("takeup.journal..", "takeup.handoff..", "takeup.cli..")
                .and(outermostIsNot(
                        "a reader or writer of files in order",
                        it -> it.getPackageName().equals("takeup.order")
                                && it.getSimpleName().startsWith("Json")))
                .and(outermostIsNot(
                        "a reader of profiles in kit",
                        it -> it.getPackageName().equals("takeup.kit")
                                && (it.getSimpleName().startsWith("Json")
                                        || it.getSimpleName().startsWith("Profile"))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.fasterxml.."));
    }

    @Test
    void lanternaIsSeenInTwoClassesOfScreenOnly() {
        Set<String> doors = Set.of("takeup.screen.Terminal", "takeup.screen.Keyboard", "takeup.screen.Painter");
        check(noClasses()
                .that(outermostIsNot("Terminal, Keyboard or Painter", it -> doors.contains(it.getName())))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.googlecode.lanterna.."));
    }

    @Test
    void picocliIsSeenInCliOnly() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("takeup.cli..")
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
        check(noClasses()
                .that(outermostIsNot("ExifFile", it -> it.getName().equals("takeup.cli.ExifFile")))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.drew.."));
        Set<String> codes = Set.of("takeup.review.Code", "takeup.review.CodeReader");
        check(noClasses()
                .that(outermostIsNot("Code or CodeReader", it -> codes.contains(it.getName())))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.google.."));
        check(noClasses()
                .that(outermostIsNot("ScanFolder", it -> it.getName().equals("takeup.cli.ScanFolder")))
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

    @Test
    void onlyCliWritesToStandardOutputAndError() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("takeup.cli..")
                .should()
                .accessTargetWhere(
                        target("System.out or System.err is used", it -> is(it, "java.lang.System", "out", "err"))));
    }

    @Test
    void onlyCliReadsTheClock() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("takeup.cli..")
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
                .resideOutsideOfPackages("takeup.cli..", "takeup.screen..")
                .should()
                .accessTargetWhere(target("System.nanoTime is read", it -> is(it, "java.lang.System", "nanoTime"))));
    }

    @Test
    void thePureRoomsKnowNoFiles() {
        check(noClasses()
                .that()
                .resideInAnyPackage(
                        "takeup.exposure..", "takeup.roll..", "takeup.day..", "takeup.review..", "takeup.shoot..")
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
        return describe("are not of " + description, it -> {
            JavaClass outermost = it;
            while (outermost.getEnclosingClass().isPresent()) {
                outermost = outermost.getEnclosingClass().get();
            }
            return !excepted.test(outermost);
        });
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(house);
    }
}
