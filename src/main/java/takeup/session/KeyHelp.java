package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A key as help, the footer and {@code takeup keys} show it.
 *
 * @param key as a person writes it
 * @param does what it does
 * @param word the word that does the same; empty where there is none
 * @param pages the views it works in, in small letters
 * @param when {@code empty}, {@code typed} or {@code always}: what must stand on the prompt
 * @param whyNot why it cannot act now; empty if it can
 */
public record KeyHelp(String key, String does, String word, List<String> pages, String when, Optional<String> whyNot) {
    private static KeyHelp of(KeyBinding binding, Optional<String> whyNot) {
        return new KeyHelp(
                binding.key().toString(),
                binding.description(),
                binding.word(),
                binding.pages().stream()
                        .map(it -> it.name().toLowerCase(Locale.ROOT))
                        .toList(),
                binding.when().name().toLowerCase(Locale.ROOT),
                whyNot);
    }

    /** All keys. */
    public static List<KeyHelp> all() {
        return KeyBindings.ALL.stream().map(it -> of(it, Optional.empty())).toList();
    }

    /** The keys that work in this view, with what hinders them now. */
    public static List<KeyHelp> here(Session session) {
        List<KeyHelp> here = new ArrayList<>();
        for (KeyBinding binding : KeyBindings.ALL) {
            if (binding.pages().contains(session.view().page())) {
                here.add(of(binding, binding.whyNot().apply(session)));
            }
        }
        return here;
    }

    /** The keys that do something now, for the footer. */
    public static List<KeyHelp> now(Session session) {
        List<KeyHelp> now = new ArrayList<>();
        for (KeyBinding binding : KeyBindings.ALL) {
            if (binding.isHere(session) && binding.whyNot().apply(session).isEmpty()) {
                now.add(of(binding, Optional.empty()));
            }
        }
        return now;
    }
}
