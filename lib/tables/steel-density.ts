/**
 * Pounds in a cubic inch of carbon steel: the 7850 kg/m³ of EN 1993-1-1, 3.2.6, and of most mill
 * tables; from memory. Not for stainless steel, which is up to 2 percent heavier.
 */
export const steelDensity = 0.2836;
