package io.axiswright.app.store;

import io.axiswright.app.problem.Conflict;
import java.util.function.Supplier;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Runs a write in a transaction of its own, again from its start when another writer got in between: a serialization
 * failure, a deadlock, or a key that the other one took first. The write must therefore read what it depends on itself.
 */
@Component
public final class Attempts {

    private static final int MOST = 5;

    private final TransactionTemplate transaction;

    Attempts(PlatformTransactionManager transactions) {
        transaction = new TransactionTemplate(transactions);
    }

    /**
     * The result of the write, committed.
     *
     * @throws Conflict if other writers got in between every time
     */
    public <T> T write(Supplier<T> write) {
        for (int attempt = 1; ; attempt++) {
            try {
                return transaction.execute(_ -> write.get());
            } catch (ConcurrencyFailureException | DataIntegrityViolationException e) {
                if (attempt == MOST) {
                    throw new Conflict("Others kept writing to the same place; try again.");
                }
            }
        }
    }
}
