package rungwise.shoplog;

import java.nio.file.Path;

/** Where a log may lie, for what must hold in both. */
public enum Store {
    SQLITE {
        @Override
        public String place(Path folder) {
            return folder.resolve("log").toString();
        }
    },
    POSTGRESQL {
        @Override
        public String place(Path folder) {
            return Server.database();
        }
    };

    /** An empty place for a log; the test is skipped with the reason where there can be none. */
    public abstract String place(Path folder);
}
