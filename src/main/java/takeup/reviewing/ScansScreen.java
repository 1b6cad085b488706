package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import takeup.disk.IoErrorText;
import takeup.files.SystemViewer;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.journal.Archive;
import takeup.message.Key;
import takeup.review.Review;
import takeup.roll.RollId;
import takeup.scanview.ScanKeys;
import takeup.scanview.ScansState;
import takeup.scanview.ScansView;
import takeup.terminal.Terminal;

/** The Scans view on a terminal: what a key decides is on the disk before the view says so. */
record ScansScreen(Archive archive, LargerScans pictures, ScansOnScreen.Keeper keeper)
        implements KeyLoop.View<ScansState> {
    @Override
    public Grid render(ScansState desk, Terminal terminal) {
        return render(desk, terminal.size());
    }

    Grid render(ScansState desk, Size size) {
        return ScansView.render(desk, pictures.shown(), size.columns(), size.rows());
    }

    @Override
    public Optional<ScansState> after(ScansState desk, Key key) {
        return ScanKeys.leaves(key) ? Optional.empty() : Optional.of(saved(ScanKeys.after(desk, key)));
    }

    @Override
    public void started(Terminal terminal, Runnable ready) {
        terminal.askForPixels(ready);
    }

    @Override
    public void shown(ScansState desk, Runnable ready) {
        if (desk.scan() >= 0 && !desk.isSheet()) {
            pictures.want(desk.proposal().scans().get(desk.scan()).name(), ready);
        }
    }

    private ScansState saved(ScansState desk) {
        if (desk.toOpen().isPresent()) {
            return SystemViewer.open(Path.of(desk.folder(), desk.toOpen().get()))
                    .map(desk::withMessage)
                    .orElse(desk);
        }
        if (desk.toSave().isEmpty()) {
            return desk;
        }
        try {
            RollId roll = desk.roll().id();
            keeper.keep(roll, desk.toSave());
            return desk.saved(Review.of(archive.reviewOf(roll).records()));
        } catch (IOException e) {
            return desk.saveFailed(IoErrorText.words(e));
        }
    }
}
