package takeup.roll;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import takeup.exposure.Aperture;
import takeup.exposure.Extension;
import takeup.kit.Filter;

/** Frames of one setting share it; those of any other one never do. */
class SettingTest {
    private static final Aperture F8 = Aperture.literal(8);
    private static final Setting SET = Setting.NONE.with(SettingPatch.aperture(F8));

    private enum Another {
        APERTURE(SettingPatch.aperture(Aperture.literal(11))),
        ZOOM(SettingPatch.zoom(50)),
        DISTANCE(SettingPatch.distance(3)),
        BIAS(SettingPatch.bias(1)),
        FLASH(SettingPatch.flash(true)),
        TRIPOD(SettingPatch.tripod(true)),
        EXTENSION(SettingPatch.extension(new Extension(Extension.Kind.TUBE, 10))),
        FILTERS(SettingPatch.filters(List.of(Filter.factor("yellow", 2))));

        private final SettingPatch change;

        Another(SettingPatch change) {
            this.change = change;
        }
    }

    @Test
    void aSettingMadeOfTheSamePartsIsTheOneOfBefore() {
        Setting again = Setting.NONE.with(SettingPatch.aperture(F8));
        assertNotSame(SET, again);
        assertSame(SET, again.orSame(SET));
        assertSame(SET, SET.orSame(SET));
    }

    @ParameterizedTest
    @EnumSource
    void anyOtherOneStaysItself(Another another) {
        Setting other = SET.with(another.change);
        assertSame(other, other.orSame(SET));
        assertSame(SET, SET.orSame(other));
    }

    @Test
    void withoutAPairItIsNotTheOneWithAPair() {
        assertSame(SET, SET.orSame(Setting.NONE));
        assertSame(Setting.NONE, Setting.NONE.orSame(SET));
        assertSame(OptionalDouble.empty(), SET.zoomMm());
        assertSame(Optional.empty(), SET.time());
    }
}
