package studio.stancebook.operations.backup;

import java.math.BigDecimal;
import java.sql.Array;
import java.sql.Connection;
import java.sql.JDBCType;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** What a column holds: how it is read from a database, written as JSON, and given to a database again. */
enum ColumnKind {
    WHOLE {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            long value = row.getLong(column);
            return row.wasNull() ? null : value;
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return value.asLong();
        }
    },
    NUMBER {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            double value = row.getDouble(column);
            return row.wasNull() ? null : value;
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return number(value);
        }
    },
    DECIMAL {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            BigDecimal value = row.getBigDecimal(column);
            return value == null ? null : value.toPlainString();
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return new BigDecimal(value.asString());
        }
    },
    TRUTH {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            boolean value = row.getBoolean(column);
            return row.wasNull() ? null : value;
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return value.asBoolean();
        }
    },
    TEXT {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            return row.getString(column);
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return value.asString();
        }
    },
    INSTANT {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            OffsetDateTime value = row.getObject(column, OffsetDateTime.class);
            return value == null ? null : value.toInstant().toString();
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return Instant.parse(value.asString()).atOffset(ZoneOffset.UTC);
        }
    },
    DATE {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            LocalDate value = row.getObject(column, LocalDate.class);
            return value == null ? null : value.toString();
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return LocalDate.parse(value.asString());
        }
    },
    ID {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            return row.getString(column);
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return UUID.fromString(value.asString());
        }
    },
    BYTES {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            byte[] value = row.getBytes(column);
            return value == null ? null : Base64.getEncoder().encodeToString(value);
        }

        @Override
        Object forStore(JsonNode value, Connection connection) {
            return Base64.getDecoder().decode(value.asString());
        }
    },
    NUMBERS {
        @Override
        @Nullable
        Object read(ResultSet row, int column) throws SQLException {
            Array value = row.getArray(column);
            return value == null ? null : value.getArray();
        }

        @Override
        Object forStore(JsonNode value, Connection connection) throws SQLException {
            Object[] numbers = StreamSupport.stream(value.spliterator(), false)
                    .map(ColumnKind::numberOrNothing)
                    .toArray();
            return connection.createArrayOf("float8", numbers);
        }
    };

    /** The value of a column of the present row, as something that JSON can say; null for NULL. */
    abstract @Nullable Object read(ResultSet row, int column) throws SQLException;

    /** The value as the driver takes it. */
    abstract Object forStore(JsonNode value, Connection connection) throws SQLException;

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<ColumnKind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /**
     * The kind of a column.
     *
     * @param type of {@link Types}
     * @param typeName as the database calls it, which says more where a driver has one type for two
     * @throws IllegalStateException if columns of this type are not known here: a backup must not leave one out
     */
    static ColumnKind of(int type, String typeName, String column) {
        String name = typeName.toLowerCase(Locale.ROOT);
        return switch (type) {
            case Types.BIGINT, Types.INTEGER, Types.SMALLINT -> WHOLE;
            case Types.DOUBLE, Types.REAL, Types.FLOAT -> NUMBER;
            case Types.NUMERIC, Types.DECIMAL -> DECIMAL;
            case Types.BOOLEAN, Types.BIT -> TRUTH;
            case Types.VARCHAR, Types.CHAR, Types.CLOB, Types.LONGVARCHAR -> TEXT;
            case Types.TIMESTAMP_WITH_TIMEZONE -> INSTANT;
            case Types.DATE -> DATE;
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> BYTES;
            default -> ofName(type, name, column);
        };
    }

    private static ColumnKind ofName(int type, String name, String column) {
        if (type == Types.TIMESTAMP && name.equals("timestamptz")) {
            return INSTANT;
        }
        if (type == Types.ARRAY && (name.equals("_float8") || name.startsWith("double precision array"))) {
            return NUMBERS;
        }
        if (name.equals("uuid")) {
            return ID;
        }
        throw new IllegalStateException("A backup cannot hold the column " + column + " of type " + name + " ("
                + JDBCType.valueOf(type) + ") yet: name it in ColumnKind.");
    }

    /** Numbers that JSON has no word for are written as text. */
    private static double number(JsonNode value) {
        return value.isString() ? Double.parseDouble(value.asString()) : value.asDouble();
    }

    private static @Nullable Double numberOrNothing(JsonNode value) {
        return value.isNull() ? null : number(value);
    }
}
