/**
 * A groove round a fixed pipe, at one point of the clock. The pipe's axis rises at α; the clock
 * angle θ runs from the highest point of the joint, 90° at three o'clock. Degrees throughout.
 *
 * With z up, axis a = (cos α, 0, sin α) and the outward normal of twelve o'clock u = (−sin α, 0,
 * cos α), the face looks along n = cos θ·u + sin θ·r and the weld runs along t = −sin θ·u + cos θ·r,
 * where r = a × u is level. Their heights give the two angles below.
 */
export interface LocalWeld {
  /** Of the weld's axis, from level: 0 to 90. */
  axisInclination: number;
  /** How far the face is turned from as far up as it can look: 0 to 180. */
  faceTilt: number;
  /** As the position figures count it: 180 as far up as it can look, 0 as far down. */
  faceRotation: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const degrees = (radians: number) => (radians * 180) / Math.PI;

/**
 * @param pipeInclination of the pipe’s axis from level, 0 to 90
 * @param clockAngle from the top of the joint, 0 to 360
 */
export function weldAtClock(pipeInclination: number, clockAngle: number): LocalWeld {
  const alpha = radians(pipeInclination);
  const theta = radians(clockAngle);
  const rise = Math.min(1, Math.abs(Math.sin(theta)) * Math.cos(alpha));
  const faceTilt = degrees(Math.atan2(Math.sin(alpha), Math.cos(theta) * Math.cos(alpha)));
  const rightHalf = clockAngle % 360 <= 180;
  return {
    axisInclination: degrees(Math.asin(rise)),
    faceTilt,
    faceRotation: (rightHalf ? 180 + faceTilt : 180 - faceTilt) % 360,
  };
}

/** The inverse: which pipe, and where on its right half, has a weld that lies like this one. */
export function clockOfWeld(
  axisInclination: number,
  faceTilt: number,
): { pipeInclination: number; clockAngle: number } {
  const along = Math.cos(radians(axisInclination));
  const rise = Math.sin(radians(axisInclination));
  const sideways = Math.min(1, Math.abs(Math.sin(radians(faceTilt))) * along);
  return {
    pipeInclination: degrees(Math.asin(sideways)),
    clockAngle: degrees(Math.atan2(rise, Math.cos(radians(faceTilt)) * along)),
  };
}
