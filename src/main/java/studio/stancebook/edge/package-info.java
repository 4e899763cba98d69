/**
 * Where the network ends and the server begins: how many connections and requests one address may have under way, how many it may send in a second, how fast
 * they must arrive, which proxies are believed, and the address by which the server is known.
 *
 * <p>Vocabulary: a <em>stranger</em> is whoever has not proved who they are in this request; a request is <em>admitted</em>
 * once they have; the <em>head</em> of a request is its request line and header fields, its <em>body</em> what follows.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package studio.stancebook.edge;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
