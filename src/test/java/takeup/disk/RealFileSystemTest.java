package takeup.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RealFileSystemTest {
    /** The example of proc(5), and a place with a blank in its name. */
    @Test
    void whereSomethingIsMountedIsTheFifthWordOfEachLine() {
        assertEquals(
                List.of("/mnt2", "/media/card 1", "/"),
                RealFileSystem.mountPlaces(
                        "36 35 98:0 /mnt1 /mnt2 rw,noatime master:1 - ext3 /dev/root rw,errors=continue\n"
                                + "41 35 8:1 / /media/card\\0401 rw,relatime - vfat /dev/sdb1 rw\n"
                                + "35 1 98:0 / / rw - ext4 /dev/root rw\n"
                                + "no line of that kind\n\n"));
    }
}
