package rungwise.shoplog;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Types;
import java.util.HexFormat;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
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
            throw new IllegalArgumentException("no key of a sender");
        }
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text(sent).getBytes(StandardCharsets.UTF_8));
            return new SenderKey(key, HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * What was kept under the key before.
     *
     * @param table  that keeps keys with their fingerprints
     * @param column that is asked for
     * @param reused sentence for a key that came with something else
     * @throws KeyReused where it did
     */
    Optional<String> before(Handle handle, String table, String column, String reused) {
        Optional<String[]> before = handle.createQuery("SELECT fingerprint, " + column + " FROM " + table
                + " WHERE idempotency_key = :key").bind("key", key)
                .map((row, ctx) -> new String[]{row.getString(1), row.getString(2)}).findOne();
        before.filter(b -> !b[0].equals(fingerprint)).ifPresent(other -> {
            throw new KeyReused(Texts.said(reused, "key", key));
        });
        return before.map(b -> b[1]);
    }

    /** The key of a row and its fingerprint, or neither. */
    static <S extends SqlStatement<S>> S bind(S statement, Optional<SenderKey> key) {
        return statement.bindBySqlType("key", key.map(SenderKey::key).orElse(null), Types.VARCHAR)
                .bindBySqlType("fingerprint", key.map(SenderKey::fingerprint).orElse(null), Types.VARCHAR);
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
