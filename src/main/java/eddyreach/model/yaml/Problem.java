package eddyreach.model.yaml;

/**
 * One thing that is wrong in an input file.
 *
 * @param file name of the file as shown to the user
 * @param line line from 1; 0 when the file as a whole is meant (it does not exist, say)
 * @param column column from 1; 0 with line 0
 * @param key path of the key, such as {@code winding.turns} or {@code housing[2].material}; may be empty
 * @param message what is wrong and what was expected, a clause in plain words
 */
public record Problem(String file, int line, int column, String key, String message) {

    /** {@code file:line:column key: message}, without the parts that are not known. */
    @Override
    public String toString() {
        String place = line > 0 ? file + ":" + line + ":" + column : file;
        return key.isEmpty() ? place + ": " + message : place + " " + key + ": " + message;
    }
}
