package takeup.panel;

import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.BigText;

/**
 * Camera and film in hand in large letters on one line of a narrow screen. Where both have no room the camera's key is
 * cut behind its third letter or later; then the film's is, but not the figures at its end: {@code KEN400}.
 */
final class NameLine {
    /** Columns between the two. */
    private static final int GAP = 2;
    /** Letters of a camera's key that stay. */
    private static final int LEAST = 3;

    private final String camera;
    private final String film;

    private NameLine(String camera, String film) {
        this.camera = camera;
        this.film = film;
    }

    /** The names in so many columns; empty where a letter of theirs has no large shape, or they have no room at all. */
    static Optional<NameLine> of(ShootState state, int columns) {
        String key = NamePlates.camera(state);
        String film = NamePlates.film(state);
        String back = NamePlates.back(state);
        if (!BigText.isDrawable(key + back + film)) {
            return Optional.empty();
        }
        // A dot between camera and back takes two columns less than a hyphen.
        String briefBack = back.replace('-', '·');
        if (width(key + back, film) <= columns) {
            return Optional.of(new NameLine(key + back, film));
        }
        String least = key.substring(0, Math.min(LEAST, key.length())) + briefBack;
        String fittingFilm = film;
        while (width(least, fittingFilm) > columns) {
            String shorter = shorter(fittingFilm);
            if (shorter.equals(fittingFilm)) {
                return Optional.empty();
            }
            fittingFilm = shorter;
        }
        int letters = key.length();
        while (letters > LEAST && width(key.substring(0, letters) + briefBack, fittingFilm) > columns) {
            letters--;
        }
        return Optional.of(new NameLine(key.substring(0, letters) + briefBack, fittingFilm));
    }

    private static int width(String camera, String film) {
        return BigText.smallWidth(camera) + GAP + BigText.smallWidth(film);
    }

    /** The same without its last letter before the figures at its end. */
    private static String shorter(String film) {
        int end = film.length();
        while (end > 0 && Character.isDigit(film.charAt(end - 1))) {
            end--;
        }
        int cut = end > 0 ? end : film.length();
        return cut <= 1 ? film : film.substring(0, cut - 1) + film.substring(cut);
    }

    /** Draws them at both edges of so many columns, so that they are seen to be two. */
    void draw(Grid grid, int column, int row, int columns) {
        BigText.drawSmall(grid, column, row, camera, TextRole.STRONG);
        int wide = width(camera, film);
        int gap = GAP + Math.min(GAP, Math.max(0, columns - wide));
        BigText.drawSmall(grid, column + wide - BigText.smallWidth(film) - GAP + gap, row, film, TextRole.READOUT);
    }
}
