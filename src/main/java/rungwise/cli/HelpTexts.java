package rungwise.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import rungwise.text.Texts;

/** What {@code --help} prints, out of the message file: under {@code help.}, by the keys that picocli asks for. */
final class HelpTexts extends ResourceBundle {
    private static final String BELOW = "help.";

    private final Map<String, String> byKey = new TreeMap<>();

    HelpTexts(Texts texts) {
        texts.all().forEach((id, sentence) -> {
            if (id.startsWith(BELOW)) {
                byKey.put(id.substring(BELOW.length()), sentence);
            }
        });
    }

    @Override
    protected Object handleGetObject(String key) {
        return byKey.get(key);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(byKey.keySet());
    }
}
