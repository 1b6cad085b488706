package takeup.loading;

import java.util.Collection;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Stock;
import takeup.prompt.CommandRejected;

/** Which film sizes a camera and a stock have in common. */
final class FilmFit {
    private FilmFit() {}

    /** The first size of the camera that the stock comes in. */
    static FilmSize size(Camera camera, Stock stock) {
        return camera.frames().keySet().stream()
                .filter(stock.filmSizes()::contains)
                .findFirst()
                .orElseThrow(() -> new CommandRejected(stock.name() + " comes in " + words(stock.filmSizes()) + ", "
                        + camera.name() + " takes " + words(camera.frames().keySet())));
    }

    /** Refuses a size that the camera does not take, or that the stock does not come in. */
    static void check(Camera camera, Stock stock, FilmSize size) {
        if (!camera.frames().containsKey(size)) {
            throw new CommandRejected(
                    camera.name() + " takes " + words(camera.frames().keySet()) + ", not " + size);
        }
        if (!stock.filmSizes().contains(size)) {
            throw new CommandRejected(stock.name() + " comes in " + words(stock.filmSizes()) + ", not " + size
                    + "; if yours does, say so in its profile");
        }
    }

    private static String words(Collection<FilmSize> sizes) {
        return String.join(" and ", sizes.stream().map(Object::toString).toList());
    }
}
