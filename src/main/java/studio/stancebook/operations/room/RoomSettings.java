package studio.stancebook.operations.room;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Settings {@code stancebook.room.*}.
 *
 * @param reserve what must be free on the disk for anything to be recorded
 * @param ballast the size of the file that is dropped when the disk is full; 0 for none
 */
@ConfigurationProperties("stancebook.room")
record RoomSettings(
        @DefaultValue("64MB") DataSize reserve,
        @DefaultValue("16MB") DataSize ballast) {

    RoomSettings {
        if (reserve.isNegative() || ballast.isNegative()) {
            throw new IllegalArgumentException(
                    "stancebook.room.reserve and stancebook.room.ballast take a size of 0 or more, such as 64MB.");
        }
    }
}
