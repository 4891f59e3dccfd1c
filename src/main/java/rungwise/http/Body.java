package rungwise.http;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;

/** Reads a body under a cap and a deadline; the server's own cap trusts the stated length, which may be absent. */
final class Body {
    static final int CAP = 1_000_000;
    /** So much more is read and thrown away, so that a sender hears the answer instead of a broken connection. */
    private static final int DRAIN = 4_000_000;
    static final Duration DEADLINE = Duration.ofSeconds(10);

    private Body() {
    }

    static byte[] of(Context ctx) throws IOException {
        long end = System.nanoTime() + DEADLINE.toNanos();
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        long seen = 0;
        InputStream in = ctx.req().getInputStream();
        for (int n = in.read(part); n >= 0; n = in.read(part)) {
            seen += n;
            if (seen <= CAP) {
                kept.write(part, 0, n);
            } else if (seen > CAP + DRAIN) {
                break;
            }
            if (System.nanoTime() > end) {
                ctx.header("Connection", "close");
                throw Refused.said(Kind.TOO_SLOW, "too-slow", "seconds", DEADLINE.toSeconds());
            }
        }
        if (seen > CAP) {
            ctx.header("Connection", "close");
            throw Refused.said(Kind.TOO_LARGE, "too-large", "bytes", CAP);
        }
        return kept.toByteArray();
    }
}
