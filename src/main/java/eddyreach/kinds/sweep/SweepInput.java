package eddyreach.kinds.sweep;

import eddyreach.engine.core.Progress;
import eddyreach.materials.Material;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;
import java.util.stream.Stream;

/** A study of many targets that differ in one or two quantities, each only for where it switches. */
public sealed interface SweepInput extends StudyInput {

    /** Largest distance that the pictures show, m. */
    double reach();

    /**
     * Largest distance at which a target is looked for, m: at least what a study searches that names no reach, so that a short picture cuts
     * off no answer.
     */
    default double searched() {
        return Math.max(reach(), StudyInput.defaultReach(switchModel()));
    }

    /** A target of such a study. */
    static Target target(String id, Target.Outline outline, List<Layer> layers) {
        return new Target(id, id, outline, layers);
    }

    /**
     * On and off distance over the thickness of metals.
     *
     * @param header what every study says
     * @param materials the metals, different from each other
     * @param outline outline of the targets
     * @param thicknesses thicknesses, m, at even ratios
     * @param reach largest distance shown, m
     */
    record Thickness(
            StudyHeader header, List<Material> materials, Target.Outline outline, ValueRange thicknesses, double reach)
            implements SweepInput {

        public Thickness {
            materials = List.copyOf(materials);
        }

        /** The target of a metal and a thickness, m. */
        public Target target(Material material, double thickness) {
            return SweepInput.target(material.id(), outline, List.of(new Layer(material, thickness)));
        }

        @Override
        public ThicknessResult run(Progress progress, Checkpoint checkpoint) {
            return ThicknessRunner.run(this, progress);
        }
    }

    /**
     * On and off distance over the size of targets.
     *
     * @param header what every study says
     * @param materials the materials, different from each other
     * @param thickness thickness of the targets, m
     * @param discs whether the targets are discs; otherwise squares
     * @param sizes diameters or sides, m, at even ratios
     * @param reach largest distance shown, m
     */
    record Size(
            StudyHeader header,
            List<Material> materials,
            double thickness,
            boolean discs,
            ValueRange sizes,
            double reach)
            implements SweepInput {

        public Size {
            materials = List.copyOf(materials);
        }

        /** The target of a material and a size, m. */
        public Target target(Material material, double size) {
            return SweepInput.target(material.id(), outline(size), List.of(new Layer(material, thickness)));
        }

        /** The outline of a size, m. */
        public Target.Outline outline(double size) {
            return discs ? new Target.Outline.Disc(size) : new Target.Outline.Square(size);
        }

        @Override
        public SizeResult run(Progress progress, Checkpoint checkpoint) {
            return SizeRunner.run(this, progress);
        }
    }

    /**
     * On distance over conductivity and permeability.
     *
     * @param header what every study says
     * @param materials materials to be marked
     * @param outline outline of the targets
     * @param thickness thickness of the targets, m
     * @param conductivities conductivities, S/m, at even ratios
     * @param permeabilities relative permeabilities, at even ratios
     * @param reach largest distance shown, m
     */
    record Conductivity(
            StudyHeader header,
            List<Material> materials,
            Target.Outline outline,
            double thickness,
            ValueRange conductivities,
            ValueRange permeabilities,
            double reach)
            implements SweepInput {

        public Conductivity {
            materials = List.copyOf(materials);
        }

        /** The target of a material. */
        public Target target(Material material) {
            return SweepInput.target(material.id(), outline, List.of(new Layer(material, thickness)));
        }

        @Override
        public ConductivityResult run(Progress progress, Checkpoint checkpoint) {
            return ConductivityRunner.run(this, progress);
        }
    }

    /**
     * On distance over the thickness of a coating.
     *
     * @param header what every study says
     * @param base layers below the coating, the one nearest to the switch first
     * @param coatings materials of the coatings, different from each other
     * @param outline outline of the targets
     * @param thicknesses thicknesses of the coating, m; from 0 on or above
     * @param reach largest distance shown, m
     */
    record Layers(
            StudyHeader header,
            List<Layer> base,
            List<Material> coatings,
            Target.Outline outline,
            ValueRange thicknesses,
            double reach)
            implements SweepInput {

        public Layers {
            base = List.copyOf(base);
            coatings = List.copyOf(coatings);
        }

        /** The base without a coating. */
        public Target bare() {
            return SweepInput.target("bare", outline, base);
        }

        /** The base under a coating of a thickness, m; the bare base for 0. */
        public Target target(Material coating, double thickness) {
            return SweepInput.target(
                    coating.id(),
                    outline,
                    thickness == 0
                            ? base
                            : Stream.concat(Stream.of(new Layer(coating, thickness)), base.stream())
                                    .toList());
        }

        /** The coating's material alone, as thick as the base. */
        public Target solid(Material coating) {
            double all = base.stream().mapToDouble(Layer::thickness).sum();
            return SweepInput.target(coating.id(), outline, List.of(new Layer(coating, all)));
        }

        @Override
        public LayersResult run(Progress progress, Checkpoint checkpoint) {
            return LayersRunner.run(this, progress);
        }
    }
}
