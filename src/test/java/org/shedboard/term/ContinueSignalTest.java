package org.shedboard.term;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class ContinueSignalTest {
    @Test
    void going_on_after_a_stop_is_heard_of() throws Exception {
        CountDownLatch heard = new CountDownLatch(1);
        assertTrue(ContinueSignal.onContinue(heard::countDown));
        String ourselves = Long.toString(ProcessHandle.current().pid());
        new ProcessBuilder("/bin/sh", "-c", "kill -CONT " + ourselves).start().waitFor();
        assertTrue(heard.await(10, TimeUnit.SECONDS));
    }
}
