package eddyreach.cli;

import eddyreach.studies.FileCheck;

/** A small file of each kind, with comments. All of them are invented. */
final class Beginnings {

    private static final String SWITCH = """
            # A switch. Every length has its unit; diameters, and depths behind the active face.
            eddyreach: switch
            name: my M18 flush switch
            note: invented, to be changed
            # flush or non-flush
            mounting: flush
            # s_n; the standard target is a square of mild steel 1 mm thick, as wide as the larger of active face and 3 s_n
            rated distance: 5 mm
            active face: 18 mm
            # of the oscillator, without a target
            frequency: 200 kHz

            # half a pot core; "core: none" is an air coil
            core:
              material: ferrite-mnzn
              outer diameter: 14 mm
              window outer diameter: 11.6 mm
              post diameter: 6 mm
              height: 4.2 mm
              window depth: 2.8 mm
              # thickness of the cap before it
              behind face: 0.6 mm

            winding:
              turns: 80
              inner diameter: 6.6 mm
              outer diameter: 11 mm
              front: 0.8 mm
              back: 3.1 mm
              # strands: 1 is plain wire, more is litz
              wire: {copper diameter: 0.1 mm, strands: 3}

            # tubes, rings and caps of any material; [] where there are none
            housing:
              - {name: tube, material: brass-tube, inner diameter: 16 mm, outer diameter: 18 mm, front: 0 mm, back: 40 mm}

            oscillator:
              element: tanh pair
              current: 50 uA
              transconductance: 200 uS

            switching:
              # off distance over on distance, less 1
              differential travel: 5 %
              # normally open or normally closed
              output: normally open
            """;

    private static final String MOUNT = """
            # A mount: what holds the switch. To be named by a study of the kind mount, recess or background.
            eddyreach: mount
            name: steel plate 10 mm, sunk by 2 mm
            note: invented, to be changed
            # how far the active face lies below the surface; or "proud by"; neither: level
            sunk by: 2 mm
            wall:
              material: fe360
              thickness: 10 mm
              # the bore is the clearance hole of the thread unless given: "bore: 20 mm", or "hole: tapped"
            """;

    private static final String STUDY = """
            # A study. "eddyreach run FILE" computes it.
            eddyreach: study
            name: sheets before a switch
            note: invented, to be changed
            # approach: parts that come nearer along the axis
            kind: approach
            # id of a switch (eddyreach list switches), or the path of its file
            switch: p14-reference
            targets:
              # without a shape it is as wide as the standard target
              - {name: sheet, material: aluminium, thickness: 1 mm}
              # a layer of zinc on steel; the layer nearest to the switch comes first
              - name: galvanised
                shape: disc
                diameter: 20 mm
                layers:
                  - {material: zinc, thickness: 10 um}
                  - {material: fe360, thickness: 1 mm}
            """;

    private static final String MATERIALS = """
            # Materials of one's own, read from shared/materials.yaml below the working folder; the shipped ones stay.
            eddyreach: materials
            materials:
              # the id, to be named by switches, mounts and studies
              my-alloy:
                name: my alloy
                # at 20 C: "25 MS/m", "43 %IACS", or in its place "resistivity: 4e-8 ohm m"
                conductivity: 25 MS/m
                temperature coefficient: 0.4 %/K
                # relative, 1 unless given
                permeability: 1
                # where the values come from
                source: assumed
                # other names that stand for it
                also: [my other name]
            """;

    private Beginnings() {}

    static String of(FileCheck.Kind kind) {
        return switch (kind) {
            case SWITCH -> SWITCH;
            case MOUNT -> MOUNT;
            case STUDY -> STUDY;
            case MATERIALS -> MATERIALS;
        };
    }
}
