package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import takeup.message.Key;
import takeup.message.Message;

/** What was being typed when the program ended is offered back. */
class DraftTest {
    @Test
    void aDraftIsOfferedOnPgUpAndStandsInNobodysWayBeforeThat() {
        Session shoot = Playing.medium().shoot().offering("4 125 ; the cox, half");
        assertTrue(shoot.prompt().isEmpty());
        Session back = Update.update(
                        shoot,
                        new Message.Pressed(
                                Key.of(Key.Name.PAGE_UP),
                                shoot.now(),
                                shoot.clock().ticks()))
                .session();
        assertEquals("4 125 ; the cox, half", back.prompt().text());
        assertEquals(shoot.saved().rolls(), back.saved().rolls());
    }
}
