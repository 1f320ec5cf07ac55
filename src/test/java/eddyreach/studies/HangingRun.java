package eddyreach.studies;

import eddyreach.report.page.FolderWriter;
import java.nio.file.Path;

/** A run that has written a file but never comes to its end: started as a process of its own and killed by the test. */
public final class HangingRun {

    private HangingRun() {}

    public static void main(String[] args) throws Exception {
        try (FolderWriter writer = FolderWriter.open(Path.of(args[0]), "result")) {
            writer.add("distances.csv", new byte[] {'x'});
            System.out.println("written");
            Thread.sleep(60_000);
        }
    }
}
