package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import takeup.action.HelpLines;
import takeup.command.CommandInfo;
import takeup.dispatch.CommandTable;
import takeup.dispatch.HelpSearch;
import takeup.message.Key;
import takeup.text.English;

/**
 * What help shows: the keys that work now, the words that do, then what cannot be done now under the reason for it. An
 * entry can be run. What is typed on the prompt narrows the list; with a topic it is the forms of one word.
 *
 * @param title what it is about
 * @param sections its parts, none of them empty
 */
public record HelpList(String title, List<Section> sections) {
    /** A heading and what stands under it. */
    public record Section(String title, List<Entry> entries) {
        public Section {
            entries = List.copyOf(entries);
        }

        /** Whether its title alone is shown, as an entry that unfolds it. */
        boolean isFolded() {
            return entries.size() == 1 && entries.get(0).isSection();
        }

        private Section folded() {
            String typed = "+ " + title + " (" + entries.size() + ")";
            return new Section(title, List.of(new Entry(typed, "", Optional.empty(), "", Optional.empty())));
        }
    }

    /**
     * A key or a line of the prompt.
     *
     * @param typed the key, {@code F2}, or the line, {@code cam 645}
     * @param does what it does
     * @param key the key that is pressed by it; empty for a line
     * @param word the word of a line, or the word that does the same as a key; empty where there is none
     * @param whyNot why it cannot be done now
     */
    public record Entry(String typed, String does, Optional<Key> key, String word, Optional<String> whyNot) {
        /** Whether it stands for a folded section. */
        boolean isSection() {
            return does.isEmpty() && key.isEmpty() && word.isEmpty();
        }
    }

    public HelpList {
        sections = List.copyOf(sections);
    }

    /** The list as it stands now. */
    public static HelpList of(Session session) {
        String wanted = session.prompt().text().strip().toLowerCase(Locale.ROOT);
        Optional<CommandInfo> topic =
                wanted.isEmpty() ? session.view().helpWord().flatMap(CommandTable::find) : Optional.empty();
        if (topic.isPresent()) {
            return article(session, topic.get());
        }
        String place = session.view().previous().name().toLowerCase(Locale.ROOT);
        List<Section> all = new ArrayList<>();
        List<Entry> keys = keys(session, KeyBinding.When.EMPTY);
        List<Entry> words = words(session);
        add(
                all,
                "Keys that work now",
                keys.stream().filter(it -> it.whyNot().isEmpty()).toList(),
                wanted);
        add(
                all,
                "Words for the prompt, each with an example",
                words.stream().filter(it -> it.whyNot().isEmpty()).toList(),
                wanted);
        List<Entry> waiting = new ArrayList<>(keys);
        waiting.addAll(words);
        for (String why :
                waiting.stream().flatMap(it -> it.whyNot().stream()).distinct().toList()) {
            add(
                    all,
                    "Not now: " + why,
                    waiting.stream()
                            .filter(it -> it.whyNot().equals(Optional.of(why)))
                            .toList(),
                    wanted);
        }
        if (!wanted.isEmpty()) {
            add(all, "On the command line", outside(), wanted);
        }
        add(all, "Keys while something is typed", keys(session, KeyBinding.When.TYPED), wanted);
        return new HelpList(
                wanted.isEmpty()
                        ? "Help for the " + (place.equals("shoot") ? "shoot screen" : "view of " + place)
                        : "Help: \"" + wanted + "\"",
                wanted.isEmpty() ? folded(all, session.view().folded()) : all);
    }

    private static List<Section> folded(List<Section> all, Set<String> titles) {
        return all.stream()
                .map(it -> titles.contains(it.title()) ? it.folded() : it)
                .toList();
    }

    /** The section that an entry is in. */
    Section section(int entry) {
        return sections.stream()
                .filter(it -> start(it.title()) <= entry)
                .reduce((one, later) -> later)
                .orElseThrow();
    }

    /** The first entry of a section. */
    int start(String title) {
        return sections.stream()
                .takeWhile(it -> !it.title().equals(title))
                .mapToInt(it -> it.entries().size())
                .sum();
    }

    private static HelpList article(Session session, CommandInfo word) {
        Optional<String> whyNot = whyNot(word, session);
        List<Entry> forms = new ArrayList<>();
        word.forms()
                .forEach(it -> forms.add(
                        new Entry(it.typed(), it.meaning(), Optional.empty(), word.word(), Optional.empty())));
        List<Section> sections = new ArrayList<>(List.of(new Section(English.capitalised(word.summary()), forms)));
        whyNot.ifPresent(it -> sections.add(new Section("Not now: " + it, List.of())));
        return new HelpList("Help: " + word.word(), sections);
    }

    private static void add(List<Section> all, String title, List<Entry> entries, String wanted) {
        List<Entry> fitting =
                new ArrayList<>(entries.stream().filter(it -> names(it, wanted)).toList());
        // What is called otherwise comes behind what is called so.
        entries.stream().filter(it -> !names(it, wanted) && isMeant(it, wanted)).forEach(fitting::add);
        if (!fitting.isEmpty()) {
            all.add(new Section(title, fitting));
        }
    }

    private static boolean names(Entry entry, String wanted) {
        return wanted.isEmpty() || has(entry.typed(), wanted) || has(entry.does(), wanted) || has(entry.word(), wanted);
    }

    private static boolean isMeant(Entry entry, String wanted) {
        boolean isWord = CommandTable.find(entry.word())
                .filter(it -> HelpSearch.finds(it, wanted))
                .isPresent();
        boolean isOutside =
                HelpSearch.OUTSIDE.stream().anyMatch(it -> it.typed().equals(entry.typed()) && it.isMeant(wanted));
        return entry.key().isEmpty() && (isWord || isOutside);
    }

    private static boolean has(String text, String wanted) {
        return text.toLowerCase(Locale.ROOT).contains(wanted);
    }

    /**
     * The keys of the view that help is about: for an empty prompt, or those that work while something is typed only.
     */
    private static List<Entry> keys(Session session, KeyBinding.When when) {
        List<Entry> keys = new ArrayList<>();
        for (KeyBinding it : KeyBindings.ALL) {
            if (it.pages().contains(session.view().previous())
                    && (it.when() == KeyBinding.When.TYPED) == (when == KeyBinding.When.TYPED)) {
                keys.add(new Entry(
                        it.key().toString(),
                        it.description(),
                        Optional.of(it.key()),
                        it.word(),
                        when == KeyBinding.When.TYPED
                                ? Optional.of("it works while something is typed")
                                : KeyObstacle.of(it.action(), session)));
            }
        }
        return keys;
    }

    private static List<Entry> outside() {
        return HelpSearch.OUTSIDE.stream()
                .map(it -> new Entry(
                        it.typed(),
                        it.does(),
                        Optional.empty(),
                        "",
                        Optional.of("that is a command of its own: leave with quit, then type " + it.typed())))
                .toList();
    }

    private static List<Entry> words(Session session) {
        List<Entry> words = new ArrayList<>();
        CommandTable.words()
                .forEach(it -> words.add(
                        new Entry(it.example(), it.summary(), Optional.empty(), it.word(), whyNot(it, session))));
        return words;
    }

    /** As it is laid out in lines. */
    public List<HelpLines.Part> parts() {
        return sections.stream()
                .map(it -> new HelpLines.Part(
                        it.isFolded() ? "" : it.title(),
                        it.entries().stream()
                                .map(entry -> new HelpLines.Item(entry.typed(), entry.does()))
                                .toList()))
                .toList();
    }

    /** All entries in their order; the highlight counts them. */
    public List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        sections.forEach(it -> all.addAll(it.entries()));
        return all;
    }

    /**
     * The entry that Enter runs: the highlighted one; while something is looked for that is no line of the prompt, the
     * first one that was found.
     */
    public static Optional<Entry> onEnter(Session session) {
        if (session.view().page() != Session.Page.HELP) {
            return Optional.empty();
        }
        List<Entry> entries = of(session).entries();
        int chosen = session.view().chosen();
        if (chosen >= 0 && chosen < entries.size()) {
            return Optional.of(entries.get(chosen));
        }
        boolean isLooking =
                session.prompt().lines().size() == 1 && session.echo().isEmpty();
        return isLooking && !entries.isEmpty() ? Optional.of(entries.get(0)) : Optional.empty();
    }

    /** Whether Enter on an entry does it at once; what may change the log goes to the prompt, where Enter does it. */
    static boolean isRun(Entry entry) {
        boolean changes = entry.key().filter(it -> it.name() == Key.Name.CTRL).isPresent()
                && !entry.word().isEmpty();
        return entry.key().isPresent()
                ? !changes
                : entry.typed().equals(entry.word())
                        && CommandTable.find(entry.word())
                                .filter(it -> it.has(CommandInfo.Trait.SHOWS_ONLY))
                                .isPresent();
    }

    /** Why a word can do nothing now; empty if it can. */
    static Optional<String> whyNot(CommandInfo word, Session session) {
        return word.whyNot(session.afterPending().asOf(session.now()), session.question());
    }

    /** What of an entry stands on the prompt then, with room for the rest of the line. */
    static String line(Entry entry, Optional<String> helpWord) {
        boolean isWhole = helpWord.isPresent()
                || Character.isDigit(entry.typed().charAt(0))
                || entry.typed().equals(entry.word());
        if (entry.key().isPresent()) {
            return entry.word();
        }
        return isWhole ? entry.typed() : entry.word() + " ";
    }

    /** What Enter will do with an entry, in words. */
    public static String words(Entry entry, Optional<String> helpWord) {
        if (entry.isSection()) {
            return "Enter or Right shows this part";
        }
        if (entry.whyNot().isPresent()) {
            return entry.typed() + " cannot be done now: " + entry.whyNot().get();
        }
        return isRun(entry)
                ? "Enter: " + (entry.key().isPresent() ? "as the key " : "") + entry.typed() + ", " + entry.does()
                : "Enter puts " + line(entry, helpWord).strip() + " on the prompt: " + entry.does();
    }
}
