package takeup.text;

/**
 * Texts filled up with blanks, so that they stand below each other, for lines of which every character is one column
 * wide. Where others may come in, such as the names of files, {@link Width} measures.
 */
public final class Padding {
    private Padding() {}

    /** The text filled up to that many characters; one blank follows in any case, so that no two words touch. */
    public static String cell(String text, int characters) {
        return text + " ".repeat(Math.max(1, characters - text.length()));
    }
}
