package rungwise.http;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Refuses names that are not the service's own. A page elsewhere can point its own name at this machine and then read
 * the answers as if they were its own; it cannot do so with an address, nor with a name listed here.
 */
final class HostCheck {
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-f:.]+]");
    private static final Pattern PORT = Pattern.compile(":\\d*$");

    private final Set<String> names;
    private final boolean anyAddress;

    private HostCheck(Set<String> names, boolean anyAddress) {
        this.names = names;
        this.anyAddress = anyAddress;
    }

    static HostCheck forBind(String host) {
        Set<String> names = new HashSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));
        names.add(host.contains(":") ? "[" + host.toLowerCase(Locale.ROOT) + "]" : host.toLowerCase(Locale.ROOT));
        boolean loopback = isLoopback(host);
        if (!loopback) {
            machineName(names);
        }
        return new HostCheck(Set.copyOf(names), !loopback);
    }

    boolean allows(String header) {
        if (header == null) {
            return false;
        }
        String name = PORT.matcher(header.trim().toLowerCase(Locale.ROOT)).replaceFirst("");
        return names.contains(name) || anyAddress && ADDRESS.matcher(name).matches();
    }

    private static boolean isLoopback(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    private static void machineName(Set<String> names) {
        try {
            String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            names.add(name);
            names.add(name + ".local");
        } catch (UnknownHostException e) {
            // a machine without a name is reached by its address
        }
    }
}
