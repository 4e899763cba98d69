package studio.stancebook.operations.room;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Settings {@code stancebook.room.*}.
 *
 * @param reserve what must be free on the disk for anything to be recorded
 */
@ConfigurationProperties("stancebook.room")
record RoomSettings(@DefaultValue("64MB") DataSize reserve) {

    RoomSettings {
        if (reserve.isNegative()) {
            throw new IllegalArgumentException("stancebook.room.reserve takes a size of 0 or more, such as 64MB.");
        }
    }
}
