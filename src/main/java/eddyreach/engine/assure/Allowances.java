package eddyreach.engine.assure;

import eddyreach.materials.Material;
import eddyreach.model.values.SwitchModel;
import eddyreach.switching.StandardQuantities;

/**
 * How far switches, their surroundings and the target's material may differ from the nominal ones.
 *
 * <p>The first three are limits of IEC 60947-5-2 (from memory, but for 0.9 to 1.1 s_n), the temperatures its rated range. Conductivity and
 * permeability are common practice, no standard: alloys and tempers differ by 10 to 20 %, and the permeability of steels at these
 * frequencies is known as 50 to 300 only.
 *
 * @param effective spread of the effective operating distance s_r of single pieces about s_n, as a fraction
 * @param usable spread of the usable operating distance s_u about s_r over temperature and supply, as a fraction
 * @param differentialTravel largest differential travel as a fraction of s_r
 * @param coldest lowest temperature of switch and target, degrees Celsius
 * @param hottest highest temperature, degrees Celsius
 * @param conductivity spread of the target's conductivity, as a fraction
 * @param leastPermeability lowest relative permeability of a magnetic conductor whose assumed one lies between this and the next
 * @param mostPermeability highest such permeability
 */
public record Allowances(
        double effective,
        double usable,
        double differentialTravel,
        double coldest,
        double hottest,
        double conductivity,
        double leastPermeability,
        double mostPermeability) {

    /** For a permeability outside the range that is common for steels: this factor either way. */
    private static final double PERMEABILITY_FACTOR = 2;

    /** The standard's limits for distances and temperatures, 20 % of conductivity, permeability 50 to 300. */
    public static final Allowances STANDARD =
            new Allowances(0.1, 0.1, StandardQuantities.MAX_DIFFERENTIAL_TRAVEL, -25, 70, 0.2, 50, 300);

    /** All that may differ, for a switch whose differential travel is stated. */
    public static Allowances of(SwitchModel model) {
        Allowances s = STANDARD;
        return new Allowances(
                s.effective,
                s.usable,
                model.differentialTravel(),
                s.coldest,
                s.hottest,
                s.conductivity,
                s.leastPermeability,
                s.mostPermeability);
    }

    /** True when the temperature of switch and target is varied, not only the limits of s_u. */
    public boolean temperature() {
        return coldest < hottest;
    }

    /** True when the material of the target is varied. */
    public boolean material() {
        return conductivity > 0;
    }

    /** Lowest permeability that an assumed one may stand for. */
    double least(Material m) {
        if (m.range().isPresent()) {
            return m.range().get().low();
        }
        return usualSteel(m) ? leastPermeability : Math.max(1, m.muReal() / PERMEABILITY_FACTOR);
    }

    /** Highest permeability that an assumed one may stand for. */
    double most(Material m) {
        if (m.range().isPresent()) {
            return m.range().get().high();
        }
        return usualSteel(m) ? mostPermeability : m.muReal() * PERMEABILITY_FACTOR;
    }

    private boolean usualSteel(Material m) {
        return m.muReal() > leastPermeability && m.muReal() < mostPermeability;
    }
}
