package takeup.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * A key as help, the footer and {@code takeup keys} show it.
 *
 * @param key as a person writes it
 * @param does what it does
 * @param word the word that does the same; empty where there is none
 * @param pages the views it works in, in small letters
 * @param when {@code empty}, {@code typed} or {@code always}: what must stand on the prompt; what is asked there leaves
 *     it empty
 */
public record KeyHelp(String key, String does, String word, List<String> pages, String when) {
    private static KeyHelp of(KeyBinding binding) {
        return new KeyHelp(
                binding.key().toString(),
                binding.description(),
                binding.word(),
                binding.pages().stream()
                        .map(it -> it.name().toLowerCase(Locale.ROOT))
                        .toList(),
                prompt(binding.when()).name().toLowerCase(Locale.ROOT));
    }

    /** What stands on the prompt then: what is asked leaves it empty. */
    private static KeyBinding.When prompt(KeyBinding.When when) {
        return when == KeyBinding.When.ASKED || when == KeyBinding.When.QUESTIONED ? KeyBinding.When.EMPTY : when;
    }

    /** The pages in words: {@code plan, bag, day end}; of most of them the others: {@code all but shoot}. */
    public String where() {
        List<String> others = Arrays.stream(Session.Page.values())
                .map(it -> it.name().toLowerCase(Locale.ROOT))
                .filter(it -> !pages.contains(it))
                .toList();
        boolean areFew = others.size() < pages.size();
        return ((areFew ? "all but " : "") + String.join(", ", areFew ? others : pages)).replace('_', ' ');
    }

    /** All keys. */
    public static List<KeyHelp> all() {
        return KeyBindings.ALL.stream().map(KeyHelp::of).toList();
    }

    /** The keys, of those that are asked for, that do something now. */
    public static List<String> now(Session session, Predicate<String> asked) {
        List<String> keys = new ArrayList<>();
        for (KeyBinding binding : KeyBindings.ALL) {
            if (!binding.isHere(session)) {
                continue;
            }
            String key = binding.key().toString();
            if (asked.test(key) && KeyObstacle.of(binding.action(), session).isEmpty()) {
                keys.add(key);
            }
        }
        return keys;
    }
}
