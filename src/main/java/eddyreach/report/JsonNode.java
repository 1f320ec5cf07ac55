package eddyreach.report;

import java.util.LinkedHashMap;

/** A JSON object that is filled in order. */
final class JsonNode extends LinkedHashMap<String, Object> {

    private static final long serialVersionUID = 1L;

    JsonNode with(String key, Object value) {
        put(key, value);
        return this;
    }
}
