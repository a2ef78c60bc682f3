/**
 * As many passes as an area takes. A hand keeps the area of a pass no closer than one part in a
 * hundred, so that much calls for no pass more.
 */
export const passesFor = (area: number, passArea: number): number =>
  Math.max(1, Math.ceil(area / (1.01 * passArea)));
