package takeup.metering;

import java.util.OptionalDouble;
import takeup.advice.ExposureInHand;
import takeup.command.CommandContext;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.history.ShootState;
import takeup.text.English;

/** The answer to a line that changes what is in hand on the camera, and what the light makes of it. */
final class SetupChange {
    private final Reply reply;
    private final String light;

    private SetupChange(Reply reply, String light) {
        this.reply = reply;
        this.light = light;
    }

    static SetupChange of(CameraSetup setup, CommandContext context) {
        Reply reply = context.reply(
                new CameraEvent.CameraSetupChanged(context.camera().key(), setup));
        return new SetupChange(reply, light(context.state(), reply.after()));
    }

    /**
     * What the light makes of the setting in hand, where that is no longer what it was: a filter leaves it a stop
     * under.
     */
    private static String light(ShootState before, ShootState after) {
        OptionalDouble was = ExposureInHand.error(before);
        OptionalDouble is = ExposureInHand.error(after);
        boolean isOther = is.isPresent() && (was.isEmpty() || Math.abs(was.getAsDouble() - is.getAsDouble()) > 0.04);
        if (isOther) {
            return " For this light " + ExposureInHand.light(after).words() + ".";
        }
        String missing = is.isEmpty() ? ExposureInHand.missing(after) : "";
        return missing.isEmpty() || missing.equals(ExposureInHand.missing(before))
                ? ""
                : " " + English.capitalised(missing) + ".";
    }

    Reply says(String what, String more) {
        return reply.says(what, more + light);
    }
}
