package eddyreach.report.page;

import java.util.LinkedHashMap;

/** A JSON object that is filled in order. */
public final class JsonNode extends LinkedHashMap<String, Object> {

    private static final long serialVersionUID = 1L;

    public JsonNode with(String key, Object value) {
        put(key, value);
        return this;
    }
}
