package studio.stancebook.account.session;

import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.convert.converter.Converter;
import org.springframework.core.serializer.support.DeserializingConverter;
import org.springframework.core.serializer.support.SerializationFailedException;

/**
 * Reads what a session keeps; nothing where a version of the server before this one wrote it in a form that is no longer
 * known, so that an update signs people out at worst, and never locks them out with an error.
 */
final class ForgivingDeserializer implements Converter<byte[], @Nullable Object> {

    private static final Logger LOG = LoggerFactory.getLogger(ForgivingDeserializer.class);

    private final DeserializingConverter strict = new DeserializingConverter();

    @Override
    @SuppressWarnings("NullAway") // it does not see what is between the angle brackets above
    public @Nullable Object convert(byte[] kept) {
        try {
            return strict.convert(kept);
        } catch (SerializationFailedException unknown) {
            LOG.info("A part of a session cannot be read any more: {}", unknown.toString());
            return null;
        }
    }
}
