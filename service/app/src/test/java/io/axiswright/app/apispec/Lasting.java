package io.axiswright.app.apispec;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts lasting values where each run has its own: keys, entity tags, times, cursors, the address and the version. Equal
 * ones stay equal within a run, so that an answer still refers to what another one named.
 */
final class Lasting {

    private static final Pattern KEY = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    private static final Pattern TAG = Pattern.compile("\\b[0-9a-f]{64}\\b");
    private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z");
    private static final Pattern CURSOR = Pattern.compile("cursor=[A-Za-z0-9_-]{27}");
    private static final Pattern ADDRESS = Pattern.compile("http://localhost:\\d+");
    private static final Pattern VERSION = Pattern.compile("(\"engineVersion\":\\s*)\"[^\"]*\"");

    private final Map<String, String> known = new HashMap<>();
    private int keys;
    private int tags;

    /** The text with lasting values. */
    String in(String text) {
        String lasting = KEY.matcher(text).replaceAll(this::key);
        lasting = TAG.matcher(lasting).replaceAll(this::tag);
        lasting = TIME.matcher(lasting).replaceAll("2026-03-02T08:15:00Z");
        lasting = CURSOR.matcher(lasting).replaceAll("cursor=AAAAAAAAAAAAAAAAAAAAAA");
        lasting = ADDRESS.matcher(lasting).replaceAll("https://axiswright.example");
        return VERSION.matcher(lasting).replaceAll("$1\"0.1.0\"");
    }

    private String key(MatchResult found) {
        return Matcher.quoteReplacement(
                known.computeIfAbsent(found.group(), _ -> "01980000-0000-7000-8000-%012d".formatted(++keys)));
    }

    private String tag(MatchResult found) {
        return known.computeIfAbsent(found.group(), _ -> "%032d".formatted(++tags));
    }
}
