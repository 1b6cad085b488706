package takeup.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import takeup.day.CameraSetup;
import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.history.ShootState;
import takeup.kit.Filter;
import takeup.roll.Setting;
import takeup.text.Plain;

/** What is set on a camera, in words: {@code f/4 1/125, 80mm f/2.8, filter yellow, bias +1/3}. */
public final class SetupText {
    private SetupText() {}

    /** What is in hand, in words: {@code f/4 1/125, 80mm f/2.8, filter yellow, bias +1/3}. */
    public static String of(CameraSetup inHand) {
        Setting setting = inHand.setting();
        List<String> parts = new ArrayList<>();
        String pair = setting.aperture().map(Object::toString).orElse("")
                + (setting.aperture().isPresent() && setting.time().isPresent() ? " " : "")
                + setting.time().map(Object::toString).orElse("");
        if (!pair.isEmpty()) {
            parts.add(pair);
        }
        setting.lens().ifPresent(it -> parts.add(it.name()));
        parts.addAll(
                marks(inHand).stream().map(it -> it.toLowerCase(Locale.ROOT)).toList());
        return String.join(", ", parts);
    }

    /** The words for all that is not neutral: FILTER yellow, BIAS +1/3, HOLD f/2.8. */
    public static List<String> marks(CameraSetup inHand) {
        Setting setting = inHand.setting();
        List<String> words = new ArrayList<>();
        if (!setting.filters().isEmpty()) {
            words.add("FILTER "
                    + String.join(
                            " and ",
                            setting.filters().stream().map(Filter::name).toList()));
        }
        if (setting.extension().kind() != Extension.Kind.NONE) {
            words.add(setting.extension().toString().toUpperCase(Locale.ROOT).replace("MM", "mm"));
        }
        if (setting.biasStops() != 0) {
            words.add("BIAS " + bias(setting.biasStops()));
        }
        if (inHand.hold().isPresent()) {
            words.add("HOLD " + inHand.hold().get());
        }
        if (setting.flash()) {
            words.add("FLASH");
        }
        if (setting.tripod()) {
            words.add("TRIPOD");
        }
        if (setting.zoomMm().isPresent()) {
            words.add(Plain.number(setting.zoomMm().getAsDouble()) + " mm");
        }
        if (setting.distanceM().isPresent()) {
            words.add(Plain.digits(setting.distanceM().getAsDouble(), 3) + " m");
        }
        return words;
    }

    /**
     * A bias as it is typed, with its unit where it could be read as an order to a lab: {@code +1/3}, {@code -1 stop}.
     */
    public static String bias(double stops) {
        double size = Math.abs(stops);
        String sign = stops < 0 ? "-" : "+";
        double thirds = Math.rint(size * 3);
        boolean isThird = Math.abs(size * 3 - thirds) < 1e-6 && thirds % 3 != 0;
        if (isThird && size < 1) {
            return sign + (int) thirds + "/3";
        }
        String number = isThird ? (int) size + " " + (int) thirds % 3 + "/3" : Plain.digits(size, 3);
        return sign + number + (size > 1 ? " stops" : " stop");
    }

    /** From where to where it is sharp: {@code 2.83 m to 3.19 m}. */
    public static String depth(DepthOfField depth) {
        return Plain.digits(depth.nearM(), 3) + " m to "
                + (depth.farM().isPresent() ? Plain.digits(depth.farM().getAsDouble(), 3) + " m" : "infinity");
    }

    /** A frame as it is typed on the camera in hand: {@code 4 125}, or {@code 4 100} where the dial has no 125. */
    public static String example(ShootState s) {
        double aperture = s.inHand().setting().lens().stream()
                .flatMap(it -> it.ring().marks().stream())
                .min(Comparator.comparingDouble(it -> Math.abs(it.stops() - 4)))
                .map(Aperture::fNumber)
                .orElse(4.0);
        String time = s.shutterInHand().stream()
                .flatMap(it -> it.marks().stream())
                .min(Comparator.comparingDouble(it -> Math.abs(it.stops() + 7)))
                .map(ExposureTime::dial)
                .orElse("125");
        return Plain.number(aperture) + " " + time;
    }
}
