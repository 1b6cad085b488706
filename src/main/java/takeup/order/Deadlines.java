package takeup.order;

import java.util.OptionalInt;

/**
 * How many days things may wait.
 *
 * @param sendWithin how long an exposed roll may wait before a reminder
 * @param scansKept after so many days the lab deletes the scans
 * @param negativesKept after so many days it destroys negatives that nobody asked for
 */
record Deadlines(int sendWithin, OptionalInt scansKept, OptionalInt negativesKept) {}
