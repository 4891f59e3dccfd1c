package rungwise.shoplog;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeMap;
import java.util.regex.Pattern;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/**
 * A sender's own name for one request, so that sending it twice keeps one attempt.
 *
 * @param key         1 to 200 visible ASCII characters
 * @param fingerprint of what was sent with it, whatever the order of its fields
 */
public record SenderKey(String key, String fingerprint) {
    private static final Pattern VISIBLE = Pattern.compile("[!-~]{1,200}");

    /**
     * From a header and the body that came with it.
     *
     * @throws IllegalArgumentException where the key is not one
     */
    public static SenderKey of(String header, JsonNode sent) {
        String key = header.length() > 1 && header.startsWith("\"") && header.endsWith("\"")
                ? header.substring(1, header.length() - 1) : header;
        if (!VISIBLE.matcher(key).matches()) {
            throw new IllegalArgumentException(Texts.said("log.no-key"));
        }
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text(sent).getBytes(StandardCharsets.UTF_8));
            return new SenderKey(key, HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(JsonNode node) {
        StringBuilder text = new StringBuilder();
        if (node.isObject()) {
            TreeMap<String, String> fields = new TreeMap<>();
            node.properties().forEach(e -> fields.put(e.getKey(), text(e.getValue())));
            return fields.toString();
        }
        if (node.isArray()) {
            node.forEach(n -> text.append(text(n)).append(';'));
            return "[" + text + "]";
        }
        return node.toString();
    }
}
