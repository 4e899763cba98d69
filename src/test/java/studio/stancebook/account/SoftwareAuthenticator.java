package studio.stancebook.account;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Base64;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An authenticator with one passkey and the browser before it, written from Web Authentication Level 3: authenticator data
 * (6.1), attestation object of the format "none" (6.5.4, 8.7), client data (5.8.1), signature (6.3.3); the key in the form of
 * RFC 9053, 7.1.1. It can be told to do wrong.
 */
public final class SoftwareAuthenticator {

    private static final int PRESENT = 0x01;
    private static final int VERIFIED = 0x04;
    private static final int WITH_CREDENTIAL = 0x40;

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final Base64.Encoder BASE64 = Base64.getUrlEncoder().withoutPadding();

    private final KeyPair keys;
    private final byte[] id = new byte[32];
    private String userHandle = "";
    private String origin;
    private boolean verifiesUser = true;
    private int count;

    /** @param origin that the browser sees */
    public SoftwareAuthenticator(String origin) {
        this.origin = origin;
        new SecureRandom().nextBytes(id);
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"));
            keys = generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    SoftwareAuthenticator at(String otherOrigin) {
        origin = otherOrigin;
        return this;
    }

    SoftwareAuthenticator withoutKnowingItsUser() {
        verifiesUser = false;
        return this;
    }

    SoftwareAuthenticator counting(int next) {
        count = next;
        return this;
    }

    String credentialId() {
        return BASE64.encodeToString(id);
    }

    /** {@code RegistrationResponseJSON} for {@code PublicKeyCredentialCreationOptionsJSON}. */
    public String make(String options) {
        JsonNode asked = JSON.readTree(options);
        userHandle = asked.at("/user/id").asString();
        byte[] data = authenticatorData(asked.at("/rp/id").asString(), WITH_CREDENTIAL, attestedCredential());
        byte[] attestation = concat(
                new byte[] {(byte) 0xA3},
                text("fmt"),
                text("none"),
                text("attStmt"),
                new byte[] {(byte) 0xA0},
                text("authData"),
                new byte[] {0x59, (byte) (data.length >> 8), (byte) data.length},
                data);
        return """
                {"id": "%s", "rawId": "%1$s", "type": "public-key", "clientExtensionResults": {"credProps": {"rk": true}},
                 "response": {"clientDataJSON": "%s", "attestationObject": "%s", "transports": ["internal"]}}
                """.formatted(
                        credentialId(),
                        BASE64.encodeToString(clientData("webauthn.create", asked)),
                        BASE64.encodeToString(attestation));
    }

    /** {@code AuthenticationResponseJSON} for {@code PublicKeyCredentialRequestOptionsJSON}. */
    String show(String options) {
        JsonNode asked = JSON.readTree(options);
        byte[] client = clientData("webauthn.get", asked);
        byte[] data = authenticatorData(asked.at("/rpId").asString(), 0, new byte[0]);
        return """
                {"id": "%s", "rawId": "%1$s", "type": "public-key", "clientExtensionResults": {},
                 "response": {"clientDataJSON": "%s", "authenticatorData": "%s", "signature": "%s", "userHandle": "%s"}}
                """.formatted(
                        credentialId(),
                        BASE64.encodeToString(client),
                        BASE64.encodeToString(data),
                        BASE64.encodeToString(signature(concat(data, sha256(client)))),
                        userHandle);
    }

    private byte[] clientData(String type, JsonNode asked) {
        return JSON.createObjectNode()
                .put("type", type)
                .put("challenge", asked.at("/challenge").asString())
                .put("origin", origin)
                .put("crossOrigin", false)
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private byte[] authenticatorData(String rpId, int more, byte[] attested) {
        int flags = PRESENT | (verifiesUser ? VERIFIED : 0) | more;
        return concat(
                sha256(rpId.getBytes(StandardCharsets.UTF_8)),
                new byte[] {(byte) flags},
                ByteBuffer.allocate(4).putInt(count).array(),
                attested);
    }

    private byte[] attestedCredential() {
        ECPublicKey key = (ECPublicKey) keys.getPublic();
        return concat(
                new byte[16],
                new byte[] {0, (byte) id.length},
                id,
                new byte[] {(byte) 0xA5, 0x01, 0x02, 0x03, 0x26, 0x20, 0x01, 0x21, 0x58, 0x20},
                coordinate(key.getW().getAffineX()),
                new byte[] {0x22, 0x58, 0x20},
                coordinate(key.getW().getAffineY()));
    }

    private static byte[] coordinate(BigInteger value) {
        byte[] bytes = value.toByteArray();
        byte[] whole = new byte[32];
        int length = Math.min(bytes.length, whole.length);
        System.arraycopy(bytes, bytes.length - length, whole, whole.length - length, length);
        return whole;
    }

    /** A text of fewer than 24 bytes in CBOR (RFC 8949, 3.1). */
    private static byte[] text(String words) {
        byte[] bytes = words.getBytes(StandardCharsets.US_ASCII);
        return concat(new byte[] {(byte) (0x60 + bytes.length)}, bytes);
    }

    private byte[] signature(byte[] content) {
        try {
            Signature signature = Signature.getInstance("SHA256withECDSA");
            signature.initSign(keys.getPrivate());
            signature.update(content);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] sha256(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] concat(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
