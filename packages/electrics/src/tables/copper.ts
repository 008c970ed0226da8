/**
 * Resistivity of annealed copper at 20 Cel, Ohm.m.
 *
 * Source: International Annealed Copper Standard, 1.7241e-8 Ohm.m (58 m/(Ohm.mm2)); NBS Handbook
 * 100, Copper Wire Tables (from memory), Industrial Power Engineering Handbook p. 970 for the 58.
 */
export const copperResistivity: number = 1.7241e-8;

/**
 * Rise of copper's resistance per kelvin, as a part of its value at 20 Cel.
 *
 * Source: Industrial Power Engineering Handbook p. 970; NBS Handbook 100 (from memory).
 */
export const copperTemperatureCoefficient: number = 0.003_93;
