/**
 * Volume that a section sweeps once round an axis, its center of area at `radius` from it: Pappus'
 * second theorem, exact for any section that the axis does not cut.
 */
export const ringVolume = (area: number, radius: number): number => 2 * Math.PI * radius * area;
