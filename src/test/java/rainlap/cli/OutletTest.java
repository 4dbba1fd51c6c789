package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutletTest {
    private int attempts;

    private Optional<String> failureWhen(String message) {
        Outlet outlet = new Outlet(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                attempts++;
                throw new IOException(message);
            }
        });
        PrintStream out = new PrintStream(outlet, false, StandardCharsets.UTF_8);
        out.print("a".repeat(100_000));
        out.print("b".repeat(100_000));
        out.flush();
        return outlet.failure();
    }

    @Test void aReaderThatHasGoneIsNoFailureAndNothingMoreIsTried() {
        assertEquals(Optional.empty(), failureWhen("Broken pipe"));
        assertEquals(1, attempts);
    }

    @Test void anythingElseIsRemembered() {
        assertEquals(Optional.of("No space left on device"), failureWhen("No space left on device"));
        assertEquals(1, attempts);
    }
}
