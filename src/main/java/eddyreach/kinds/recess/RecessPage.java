package eddyreach.kinds.recess;

import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountPage;
import eddyreach.kinds.mount.MountWords;
import eddyreach.kinds.mount.TrialPlan;
import eddyreach.kinds.mount.TrialWords;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What is said of maps over recesses. */
final class RecessPage {

    private RecessPage() {}

    static void write(RecessResult result, Page page) {
        if (result.partial()) {
            page.caution("Partial: " + result.done() + " of " + result.cells()
                    + " cells were computed before the run was stopped. The next run continues from there.");
        }
        double[] d = result.diameters();
        double[] t = result.depths();
        page.paragraph("The map: recess diameters " + Labels.millimetres(d[0]) + " to "
                + Labels.millimetres(d[d.length - 1])
                + " mm, depths " + Labels.millimetres(t[0]) + " to " + Labels.millimetres(t[t.length - 1])
                + " mm below the surface; wall " + Labels.length(result.input().thickness()) + " thick, hole "
                + Labels.length(result.input().bore(), 4) + "; " + position(result) + ". In free air on at "
                + Labels.uncertain(result.free().on(), result.free().onError()) + " mm.");
        page.table(
                List.of("wall", "cells OK", "shift over 10 %", "over 50 % of reserve", "latched"),
                Set.of(1, 2, 3, 4),
                result.panels().stream().map(RecessPage::row).toList());
        for (RecessResult.Panel p : result.panels()) {
            p.judged().ifPresent(c -> {
                page.heading(p.material().name() + ", " + judged(result));
                page.paragraph(MountWords.sentence(c));
                MountPage.single(c, result.rules(), page);
            });
        }
        page.heading("What the numbers mean");
        page.paragraph(MountWords.RESERVE);
        page.paragraph(MountWords.LIMITS);
        page.paragraph(MountWords.PROPOSALS);
        page.paragraph(
                "Cells are computed at the coarse resolution; those next to a limit, and a few others, again at the finer one."
                        + " The largest difference gives the error of the rest (recess.csv).");
        TrialPlan.of(result.panels().stream().flatMap(p -> p.judged().stream()), result.free())
                .ifPresent(plan -> TrialWords.write(result.model(), plan, page));
        page.caution(MountWords.DRAWINGS);
    }

    /** The recess on the drawing, in each material. */
    static String answer(RecessResult result) {
        String all = result.panels().stream()
                .filter(p -> p.judged().isPresent())
                .map(p -> MountWords.sentence(
                        p.judged().orElseThrow(), " in " + p.material().name()))
                .collect(Collectors.joining(" "));
        return all.isEmpty()
                ? "Not computed yet: the recess in question comes after the map."
                : all + " This is for a recess " + judged(result) + ".";
    }

    private static String judged(RecessResult result) {
        RecessInput.Size size = result.input().judged();
        return Labels.length(size.diameter(), 4) + " wide and " + Labels.length(size.depth(), 4) + " deep"
                + (result.input().drawn().isPresent() ? "" : " (middle of the map)");
    }

    /** Where the face is. */
    static String position(RecessResult result) {
        double surface = result.input().surface();
        String by = Labels.length(Math.abs(surface));
        return result.input().bottom()
                ? "face level with the bottom of the recess"
                : surface == 0
                        ? "face level with the wall"
                        : surface > 0 ? "face sunk by " + by : "face proud by " + by;
    }

    private static Page.Row row(RecessResult.Panel p) {
        int safe = 0;
        int shifted = 0;
        int little = 0;
        int latched = 0;
        for (RecessCell c : p.rows().stream()
                .flatMap(List::stream)
                .flatMap(Optional::stream)
                .toList()) {
            if (c.safe()) {
                safe++;
            } else if (c.verdict() != MountCase.Verdict.RELEASED) {
                latched++;
            } else if (c.used() > MountCase.CAREFUL) {
                little++;
            } else {
                shifted++;
            }
        }
        List<String> cells = new ArrayList<>(List.of(p.material().id()));
        for (int n : new int[] {safe, shifted, little, latched}) {
            cells.add(String.valueOf(n));
        }
        return new Page.Row(cells, false);
    }
}
