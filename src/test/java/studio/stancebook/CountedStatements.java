package studio.stancebook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/** Counts every statement that goes to the database, whichever part of the server sends it: import it into a test. */
@TestConfiguration(proxyBeanMethods = false)
public class CountedStatements {

    private static final AtomicInteger SENT = new AtomicInteger();

    /** How many statements were sent since the start. */
    public static int sent() {
        return SENT.get();
    }

    @Bean
    static BeanPostProcessor countingDataSource() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof DataSource source ? new Counting(source) : bean;
            }
        };
    }

    private static final class Counting extends DelegatingDataSource {

        Counting(DataSource target) {
            super(target);
        }

        @Override
        public Connection getConnection() throws SQLException {
            return (Connection) counted(Connection.class, super.getConnection());
        }
    }

    private static Object counted(Class<?> kind, Object target) {
        return Proxy.newProxyInstance(
                kind.getClassLoader(),
                new Class<?>[] {kind},
                (proxy, method, arguments) -> answer(target, method, arguments));
    }

    private static @Nullable Object answer(Object target, Method method, Object @Nullable [] arguments)
            throws Throwable {
        if (target instanceof Statement && method.getName().startsWith("execute")) {
            SENT.incrementAndGet();
        }
        try {
            Object result = method.invoke(target, arguments);
            return result instanceof Statement ? counted(method.getReturnType(), result) : result;
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        }
    }
}
