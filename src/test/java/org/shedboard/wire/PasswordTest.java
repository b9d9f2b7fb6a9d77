package org.shedboard.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PasswordTest {
    @TempDir
    private Path directory;

    @Test
    void only_the_drawn_name_and_password_are_right() {
        Credentials drawn = Password.drawn();
        Password password = Password.of(drawn);
        assertTrue(password.isThatOf(drawn));
        assertFalse(password.isThatOf(new Credentials(drawn.name(), "")));
        assertFalse(password.isThatOf(new Credentials("", drawn.password())));
        assertFalse(password.isThatOf(new Credentials(drawn.name(), drawn.password() + "a")));
    }

    @Test
    void no_two_are_drawn_alike() {
        assertNotEquals(Password.drawn().password(), Password.drawn().password());
        assertTrue(Password.drawn().password().matches("[a-z2-9]{5}(-[a-z2-9]{5}){3}"));
    }

    @Test
    void what_is_kept_lets_in_and_does_not_tell_the_password() throws Exception {
        Credentials drawn = Password.drawn();
        Path file = directory.resolve("password");
        Password.of(drawn).keepIn(file);
        assertTrue(Password.in(file).isThatOf(drawn));
        assertFalse(Files.readString(file).contains(drawn.password()));
    }

    @Test
    void the_same_password_is_kept_differently_each_time() throws Exception {
        Credentials drawn = Password.drawn();
        Password.of(drawn).keepIn(directory.resolve("one"));
        Password.of(drawn).keepIn(directory.resolve("other"));
        assertNotEquals(Files.readString(directory.resolve("one")), Files.readString(directory.resolve("other")));
    }

    @Test
    void nothing_prints_a_password_by_accident() {
        Credentials drawn = Password.drawn();
        assertFalse(
                new Ticket(new Fingerprint("0".repeat(64)), drawn).toString().contains(drawn.password()));
    }

    @Test
    void each_wrong_password_waits_twice_as_long_up_to_eight_seconds() throws Exception {
        Guesses guesses = new Guesses();
        InetAddress from = InetAddress.getByName("192.0.2.1");
        assertEquals(Duration.ofMillis(250), guesses.wrongFrom(from));
        assertEquals(Duration.ofMillis(500), guesses.wrongFrom(from));
        for (int i = 0; i < 40; i++) {
            guesses.wrongFrom(from);
        }
        assertEquals(Duration.ofSeconds(8), guesses.wrongFrom(from));
        assertEquals(Duration.ofMillis(250), guesses.wrongFrom(InetAddress.getByName("192.0.2.2")));
        guesses.rightFrom(from);
        assertEquals(Duration.ofMillis(250), guesses.wrongFrom(from));
    }
}
