package studio.stancebook.operations.memory;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Makes memory a part of the server's health, and of its readiness. */
@Configuration(proxyBeanMethods = false)
class MemoryConfiguration {

    @Bean
    HeapUse heapUse() {
        return HeapUse.ofThisProcess();
    }

    @Bean
    MemoryHealth memoryHealthIndicator(HeapUse heap, Clock clock) {
        return new MemoryHealth(heap, clock);
    }
}
