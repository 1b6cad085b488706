package takeup.roll;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Extension;
import takeup.kit.Filter;
import takeup.kit.Lens;

/** What a line says of the lens and what is on it; what it does not mention is empty and stays as it was. */
public record LensPatch(
        Optional<Lens> lens,
        OptionalDouble zoomMm,
        OptionalDouble distanceM,
        Optional<List<Filter>> filters,
        Optional<Extension> extension) {
    /** Nothing said. */
    static final LensPatch NOTHING = new LensPatch(
            Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());

    boolean isNothing() {
        return lens.isEmpty() && zoomMm.isEmpty() && distanceM.isEmpty() && filters.isEmpty() && extension.isEmpty();
    }

    LensPatch and(LensPatch more) {
        return new LensPatch(
                more.lens.or(() -> lens),
                SettingPatch.either(more.zoomMm, zoomMm),
                SettingPatch.either(more.distanceM, distanceM),
                more.filters.or(() -> filters),
                more.extension.or(() -> extension));
    }
}
