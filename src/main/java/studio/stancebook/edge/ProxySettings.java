package studio.stancebook.edge;

import java.util.List;
import org.apache.catalina.util.NetMaskSet;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Setting {@code stancebook.trusted-proxies}.
 *
 * @param trustedProxies addresses and networks in CIDR notation (RFC 4632) of the proxies whose forwarded headers are
 *     believed; none if it is not set
 */
@ConfigurationProperties("stancebook")
record ProxySettings(@DefaultValue List<String> trustedProxies) {

    private static final String ADDRESS_OR_NETWORK = "[0-9a-fA-F:.]+(/[0-9]{1,3})?";

    ProxySettings {
        trustedProxies = List.copyOf(trustedProxies);
        boolean known = trustedProxies.stream().allMatch(proxy -> proxy.matches(ADDRESS_OR_NETWORK));
        if (!known || !new NetMaskSet().addAll(String.join(",", trustedProxies)).isEmpty()) {
            throw new IllegalArgumentException(
                    "stancebook.trusted-proxies (STANCEBOOK_TRUSTED_PROXIES) takes addresses and networks separated by"
                            + " commas, such as 10.0.0.5,10.1.0.0/16; not \"" + String.join(",", trustedProxies)
                            + "\".");
        }
    }

    /** As Tomcat takes them. */
    String list() {
        return String.join(",", trustedProxies);
    }
}
