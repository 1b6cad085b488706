package takeup.kit;

import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;

/** The pair that a meter itself showed: f/2.8 at 1/60. */
public record MeteredPair(Aperture aperture, ExposureTime time) {}
