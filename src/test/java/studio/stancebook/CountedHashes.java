package studio.stancebook;

import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.security.crypto.password.PasswordEncoder;

/** Counts how often the server of a {@link StudioTest} hashes a password in order to compare it. */
@TestComponent
public class CountedHashes implements BeanPostProcessor {

    private final AtomicInteger compared = new AtomicInteger();

    public int compared() {
        return compared.get();
    }

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        return bean instanceof PasswordEncoder encoder ? new Counted(encoder, compared) : bean;
    }

    private record Counted(PasswordEncoder encoder, AtomicInteger compared) implements PasswordEncoder {

        @Override
        public @Nullable String encode(@Nullable CharSequence password) {
            return encoder.encode(password);
        }

        /** An empty password is compared without hashing. */
        @Override
        public boolean matches(@Nullable CharSequence password, @Nullable String hash) {
            if (password != null && !password.isEmpty() && hash != null && hash.startsWith("{bcrypt}$2")) {
                compared.incrementAndGet();
            }
            return encoder.matches(password, hash);
        }

        @Override
        public boolean upgradeEncoding(@Nullable String hash) {
            return encoder.upgradeEncoding(hash);
        }
    }
}
