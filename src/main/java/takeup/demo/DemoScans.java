package takeup.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import takeup.files.PngImage;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;

/**
 * The scans of the demo's first roll, drawn as they might come back from a lab: a scene for each note, darker and
 * without texture in its shadows where the frame got too little light. One frame is missing, as happens.
 *
 * @param roll the roll
 * @param folder where they go
 */
public record DemoScans(Roll roll, Path folder) {
    /** The frame that the lab left out. */
    private static final int MISSING = 13;

    /** Draws them all, in the order of the film. */
    public void draw() throws IOException {
        Files.createDirectories(folder);
        List<Frame> frames = roll.frames();
        int number = 1;
        int scene = -1;
        for (int i = 0; i < frames.size(); i++) {
            boolean isDrawn = frames.get(i).number() != MISSING;
            scene += isDrawn && frames.get(i).note().isPresent() ? 1 : 0;
            if (isDrawn) {
                Path file = folder.resolve(String.format(Locale.ROOT, "crew_%02d.png", number));
                number++;
                DemoScene drawn = new DemoScene(Math.max(0, scene), i, over(frames.get(i)));
                Files.write(file, PngImage.of(drawn.picture()));
            }
        }
    }

    private double over(Frame frame) {
        return ExposureResult.of(roll, frame).errorStops().orElse(0);
    }
}
