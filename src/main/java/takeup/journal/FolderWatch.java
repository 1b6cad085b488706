package takeup.journal;

import java.time.OffsetDateTime;
import java.util.List;
import takeup.disk.Reserve;

/**
 * What the photographer is to be told of the folder beside what was saved: a part of it that went away, a disk that is
 * almost full. Looked for once a second and not for each of many quick frames, and only when somebody asks, which is
 * after a frame was acknowledged.
 */
final class FolderWatch {
    private final JournalPlaces places;
    private final Reserve reserve;
    private boolean isDue;
    private boolean isLittleRoomTold;
    /** The second of the last step. */
    private long second = Long.MIN_VALUE;

    FolderWatch(JournalPlaces places, Reserve reserve) {
        this.places = places;
        this.reserve = reserve;
    }

    /** A step was written then. */
    void written(OffsetDateTime at) {
        isDue |= at.toEpochSecond() != second;
        second = at.toEpochSecond();
    }

    /** Something was found amiss: the next look is not put off. */
    void alarmed() {
        isDue = true;
    }

    /** It was told that the disk is full. */
    void roomIsTold() {
        isLittleRoomTold = true;
    }

    /** Adds what is found to what is told anyway. */
    void look(List<String> remarks) {
        if (!isDue) {
            return;
        }
        isDue = false;
        places.gone().ifPresent(remarks::add);
        if (!isLittleRoomTold && reserve.isLow()) {
            isLittleRoomTold = true;
            remarks.add("less than 50 MB are free on this disk: free some space before it is full");
        }
    }
}
