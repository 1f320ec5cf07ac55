package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(10)
class PermitTest {

    @Test
    void whatDoesNotFitAloneIsRefusedBeforeItBegins() {
        Memory memory = new Memory(() -> 100_000_000);
        assertThatThrownBy(() -> memory.take(150_000_000))
                .isInstanceOf(MemoryException.class)
                .hasMessageContaining("may need 150 MB and the Java heap has 100 MB left");
        memory.take(100_000_000);
        memory.give(100_000_000, 0);
    }

    @Test
    void whatDoesNotFitBesideAnotherWaitsForIt() throws Exception {
        Memory memory = new Memory(() -> 100);
        memory.take(60);
        AtomicInteger stage = new AtomicInteger();
        CompletableFuture<Void> other = CompletableFuture.runAsync(() -> {
            stage.set(1);
            memory.take(60);
            stage.set(2);
            memory.give(60, 0);
        });
        memory.take(40);
        while (stage.get() == 0) {
            Thread.onSpinWait();
        }
        Thread.sleep(50);
        assertThat(stage).as("both small ones are held").hasValue(1);
        memory.give(40, 0);
        Thread.sleep(50);
        assertThat(stage).as("60 of 100 are held").hasValue(1);
        memory.give(60, 0);
        other.get(5, TimeUnit.SECONDS);
        assertThat(stage).hasValue(2);
    }

    @Test
    void whatIsKeptCountsUntilTheHeapIsLookedAtAgain() throws Exception {
        AtomicLong free = new AtomicLong(100);
        Memory memory = new Memory(free::get);
        memory.take(50);
        memory.take(50);
        memory.give(50, 30);
        CompletableFuture<Void> third = CompletableFuture.runAsync(() -> memory.take(40));
        Thread.sleep(50);
        assertThat(third).as("50 are held and 30 kept").isNotDone();
        free.set(70);
        memory.give(50, 0);
        third.get(5, TimeUnit.SECONDS);
        assertThatThrownBy(() -> {
                    memory.give(40, 0);
                    memory.take(80);
                })
                .isInstanceOf(MemoryException.class);
    }

    @Test
    void garbageIsCollectedBeforeARefusal() {
        AtomicInteger asked = new AtomicInteger();
        Memory memory = new Memory(() -> asked.incrementAndGet() == 1 ? 10 : 100);
        memory.take(50);
        assertThat(asked).hasValue(2);
    }
}
