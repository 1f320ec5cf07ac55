package eddyreach.proof;

import eddyreach.materials.Material;
import eddyreach.model.read.Materials;
import java.util.List;

/** The materials shipped with the program, and skin depth. */
final class MaterialChecks {

    private MaterialChecks() {}

    static List<Check> all() {
        CheckList list = new CheckList("Materials");
        Materials materials = Shipped.materials();
        resistivity(list, materials);
        list.from(Provenance.READ, "ASNT programmed instruction, table 9.2: carbon steels 109 to 166")
                .range(
                        "relative permeability of Fe 360",
                        109,
                        166,
                        "spread of the grades",
                        () -> materials.get(Materials.STANDARD_STEEL).muReal())
                .from(Provenance.READ, "skin depths quoted in the literature")
                .value("1.4 MS/m at 100 kHz, mm", "1.35", () -> 1e3 * skinDepth(1.4e6, 100e3))
                .value("58 MS/m at 1 MHz, µm", "66.085", () -> 1e6 * skinDepth(58e6, 1e6));
        return list.list();
    }

    private static void resistivity(CheckList list, Materials m) {
        String linear = "a linear law, slope at 20 C: within 2 %";
        list.from(Provenance.READ, "ASTM E1004: 100 % IACS at 20 C")
                .value("copper, MS/m", "58.0", () -> 1e-6 * m.get("copper").conductivity(20))
                .from(Provenance.PRINTED, "annealed copper standard, in 1/K")
                .value(
                        "temperature coefficient of copper",
                        "0.00393",
                        () -> m.get("copper").temperatureCoefficient());
        list.from(Provenance.READ, "CRC Handbook, after Matula 1979 and Desai 1984, in 1e-8 ohm m");
        crc(list, m, "copper-pure", "1.543", "1.678", "2.22", linear);
        crc(list, m, "aluminium-pure", "2.417", "2.650", "3.56", linear);
        crc(list, m, "tungsten", "4.82", "5.28", "7.18", linear);
        crc(list, m, "brass-70-30", "5.87", "6.08", "6.91", linear);
        crc(list, m, "silver", "1.467", "1.587", "2.07", linear);
        list.from(Provenance.MEMORY, "CRC Handbook and ASM handbooks, in 1e-8 ohm m at 20 C");
        String[][] values = {
            {"iron-pure", "9.61"}, {"nickel", "6.93"}, {"zinc", "5.90"}, {"tin", "11.5"},
            {"lead", "20.8"}, {"titanium-grade-2", "54"}, {"stainless-304", "72"}, {"stainless-316", "74"},
            {"stainless-430", "60"}
        };
        for (String[] v : values) {
            list.value(v[0], v[1], () -> at(m, v[0], 20));
        }
        list.range("carbon-steel", 13.6, 17.7, "spread of the grades", () -> at(m, "carbon-steel", 20));
    }

    private static void crc(
            CheckList list, Materials m, String id, String cold, String room, String hot, String linear) {
        list.value(id + ", 20 C", room, () -> at(m, id, 20))
                .within(0.02, id + ", 0 C", cold, linear, () -> at(m, id, 0))
                .within(0.02, id + ", 100 C", hot, linear, () -> at(m, id, 100));
    }

    private static double at(Materials materials, String id, double celsius) {
        return 1e8 / materials.get(id).conductivity(celsius);
    }

    private static double skinDepth(double sigma, double frequency) {
        return new Material("metal", "metal", sigma, 0, 1, 0, "check").skinDepth(2 * Math.PI * frequency, 20);
    }
}
