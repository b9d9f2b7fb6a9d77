package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class CheckpointsTest {
    /** The database is told twice, with something to save between, since the first may find that its own writer is at it. */
    private static final int STATEMENTS = 4;

    private final AtomicInteger made = new AtomicInteger();
    private final CountDownLatch firstBegan = new CountDownLatch(1);
    private final CountDownLatch firstMayEnd = new CountDownLatch(1);
    private final Checkpoints checkpoints =
            new Checkpoints(new Sql(connection(), Connection.TRANSACTION_READ_COMMITTED), sql -> {}, sql -> {});

    private boolean isFull;

    /** A connection of which every statement is half a checkpoint; the first one takes until it is let end. */
    private Connection connection() {
        return (Connection) Proxy.newProxyInstance(
                getClass().getClassLoader(),
                new Class<?>[] {Connection.class},
                (proxy, method, arguments) -> method.getName().equals("createStatement") ? statement() : null);
    }

    private Statement statement() {
        return (Statement) Proxy.newProxyInstance(
                getClass().getClassLoader(),
                new Class<?>[] {Statement.class},
                (proxy, method, arguments) -> method.getName().equals("execute") ? execute() : null);
    }

    private boolean execute() throws SQLException, InterruptedException {
        if (isFull) {
            throw new SQLException("No space left on device", "HY000", 50000);
        }
        if (made.incrementAndGet() == 1) {
            firstBegan.countDown();
            firstMayEnd.await();
        }
        return false;
    }

    private Thread waiter(CountDownLatch asking) {
        Thread thread = new Thread(() -> {
            asking.countDown();
            checkpoints.await();
        });
        thread.start();
        return thread;
    }

    @Test
    void those_who_wait_together_share_one_checkpoint_that_began_after_they_asked() throws InterruptedException {
        Thread first = waiter(new CountDownLatch(1));
        firstBegan.await();
        CountDownLatch asking = new CountDownLatch(20);
        List<Thread> others = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            others.add(waiter(asking));
        }
        asking.await();
        for (Thread other : others) {
            while (other.getState() != Thread.State.BLOCKED) {
                Thread.onSpinWait();
            }
        }
        firstMayEnd.countDown();
        first.join();
        for (Thread other : others) {
            other.join();
        }
        assertEquals(2 * STATEMENTS, made.get());
    }

    @Test
    void each_who_comes_alone_gets_a_checkpoint() {
        firstMayEnd.countDown();
        checkpoints.await();
        checkpoints.await();
        assertEquals(2 * STATEMENTS, made.get());
    }

    @Test
    void after_one_failure_none_is_tried_again() {
        isFull = true;
        StoreFailure failure = assertThrows(StoreFailure.class, checkpoints::await);
        assertTrue(failure.is(StoreFailure.Kind.DISK_FULL));
        isFull = false;
        assertThrows(StoreFailure.class, checkpoints::await);
        assertEquals(0, made.get());
    }
}
