package eddyreach.model.yaml;

/**
 * Where something stands in a file.
 *
 * @param problems where to report what is wrong here
 * @param file name of the file
 * @param line line from 1
 * @param column column from 1
 * @param key path of the key
 */
public record Place(Problems problems, String file, int line, int column, String key) {

    void report(String message) {
        problems.add(new Problem(file, line, column, key, message));
    }

    /** The same place under another key. */
    Place named(String otherKey) {
        return new Place(problems, file, line, column, otherKey);
    }
}
