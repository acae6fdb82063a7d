import { convert, type Unit, wrenchSetting } from '../../trade/index.ts';
import { nearestMark } from './torque-walk.ts';

export interface WrenchInHand {
  /** The torque wanted at the bolt, and its unit. */
  target: number;
  unit: Unit;
  /** The wrench's own unit and the step of its scale; null when no wrench of the list is used. */
  wrench: { unit: Unit; resolution: number } | null;
  /** From the square drive to the bolt, mm; 0 without an extension. */
  extension: number;
  /** Between wrench and extension, degrees: 0 straight out. */
  angle: number;
  /** From the middle of the grip to the square drive, mm; wanted with an extension. */
  wrenchLength: number | null;
}

export interface WrenchMark {
  /** What to set the wrench to, in `unit`, on a mark of its scale. */
  setting: number;
  unit: Unit;
  /** The torque that this mark gives at the bolt, in `unit`. */
  atBolt: number;
}

/**
 * What to set the wrench to for the extension on it, in its own unit, and what the bolt then gets.
 * @throws {RangeError} when there is an extension and no length of the wrench, or no lever is left
 */
export function wrenchMark(hand: WrenchInHand): WrenchMark {
  const unit = hand.wrench?.unit ?? hand.unit;
  const share = settingShare(hand);
  const exact = convert(hand.target, hand.unit, unit) * share;
  const setting =
    hand.wrench === null
      ? Number(exact.toPrecision(4))
      : nearestMark(exact, hand.wrench.resolution);
  return { setting, unit, atBolt: Number((setting / share).toPrecision(4)) };
}

/** The setting is in proportion to the torque: this is the setting for a torque of one. */
function settingShare({ extension, angle, wrenchLength }: WrenchInHand): number {
  if (extension === 0) return 1;
  if (wrenchLength === null)
    throw new RangeError('With an extension the length of the wrench is needed.');
  return wrenchSetting({ torque: 1, wrench: wrenchLength, extension, angle });
}
