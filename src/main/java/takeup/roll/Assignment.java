package takeup.roll;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The shoot that a roll belongs to: "Regatta day", 2026-09-12.
 *
 * @param name as the photographer calls it
 * @param date the day it is on
 * @param client words about whom it is for; no export holds them unless they are asked for
 */
public record Assignment(String name, LocalDate date, Optional<String> client) {}
