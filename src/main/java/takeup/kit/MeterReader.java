package takeup.kit;

import takeup.exposure.Light;
import takeup.exposure.Scale;

/** The fields of a meter's profile: what it shows, and how it is calibrated. */
final class MeterReader implements FieldsReader<Meter> {
    @Override
    public Meter read(String key, ProfileFields fields) {
        String name = fields.text("name");
        Meter.Shows shows = switch (fields.word("shows")) {
            case "pair" -> Meter.Shows.PAIR;
            case "aperture" -> Meter.Shows.APERTURE;
            case "ev" -> Meter.Shows.EV;
            default -> throw fields.noneOf("shows", "pair, aperture, ev");
        };
        boolean tenths = fields.flag("tenths");
        Scale step = fields.step().orElse(Scale.THIRD);
        boolean setSpeed = fields.has("evShown") && isSetSpeed(fields);
        double incident = fields.number("incidentConstant", 100, 1000, Meter.NONE.incidentConstant());
        double reflected = fields.number("reflectedConstant", 5, 30, Meter.NONE.reflectedConstant());
        Light.Method method = fields.has("method") ? method(fields) : Light.Method.INCIDENT;
        fields.done();
        return new Meter(key, name, new Meter.Display(shows, tenths, step, setSpeed), incident, reflected, method);
    }

    private static boolean isSetSpeed(ProfileFields fields) {
        return switch (fields.word("evShown")) {
            case "iso100" -> false;
            case "set-speed" -> true;
            default -> throw fields.noneOf("evShown", "iso100, set-speed");
        };
    }

    private static Light.Method method(ProfileFields fields) {
        return switch (fields.word("method")) {
            case "incident" -> Light.Method.INCIDENT;
            case "reflected" -> Light.Method.REFLECTED;
            case "spot" -> Light.Method.SPOT;
            default -> throw fields.noneOf("method", "incident, reflected, spot");
        };
    }
}
