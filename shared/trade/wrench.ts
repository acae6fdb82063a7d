import { demandBetween, demandNotNegative, demandPositive, finite } from './demand.ts';

export interface ExtendedWrench {
  /** Torque wanted at the fastener, in any unit. */
  readonly torque: number;
  /** From the middle of the grip to the middle of the square drive, mm. */
  readonly wrench: number;
  /** From the square drive to the fastener, mm. */
  readonly extension: number;
  /** Between extension and wrench, degrees: 0 straight out, 90 square to it, 180 folded back. */
  readonly angle?: number | undefined;
}

/**
 * What to set a torque wrench to that carries an extension, in the unit of `torque`:
 * T·L/(L + E·cos angle). At 90° the setting is the torque itself. Holds for a pull at the middle of
 * the grip, square to the wrench. Source: NAVEDTRA 14315, ch. 3, 'Torquing computation'; the cosine
 * is the lever rule.
 *
 * @throws {RangeError} when a figure is out of sense or an extension folded back is as long as the
 * wrench
 */
export function wrenchSetting({ torque, wrench, extension, angle = 0 }: ExtendedWrench): number {
  demandNotNegative(torque, 'the torque');
  demandPositive(wrench, 'the length of the wrench');
  demandNotNegative(extension, 'the length of the extension');
  demandBetween(angle, -180, 180, 'the angle of the extension in degrees');
  const lever = wrench + extension * Math.cos((angle * Math.PI) / 180);
  if (lever <= 0) {
    throw new RangeError(
      `An extension of ${extension} mm folded back leaves no lever on a wrench of ${wrench} mm.`,
    );
  }
  return finite((torque * wrench) / lever);
}
