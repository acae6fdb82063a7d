import { convert, difference, toBase, type Unit, unitLabel } from '../../trade/index.ts';

/** What a gauge's register says of it, as far as a reading depends on it. */
export interface GaugeInHand {
  name: string;
  unit: Unit;
  rangeLow: number;
  rangeHigh: number;
  /** Expanded (k = 2), in `unit`. */
  uncertainty: number;
  expired: boolean;
  calibrationDue: string | null;
  foundBadOn: string | null;
}

/**
 * What the paper has to say of a gauge at the moment of a reading; empty when there is nothing.
 * @param value in `unit`
 */
export function gaugeRemark(gauge: GaugeInHand | null, value: number, unit: Unit): string {
  if (gauge === null) return 'no gauge named';
  const inGaugeUnit = convert(value, unit, gauge.unit);
  return [
    gauge.foundBadOn === null ? '' : `gauge was found bad on ${gauge.foundBadOn}`,
    gauge.expired ? `calibration was due ${gauge.calibrationDue}` : '',
    inGaugeUnit < gauge.rangeLow || inGaugeUnit > gauge.rangeHigh
      ? `outside the gauge’s range, ${gauge.rangeLow} to ${gauge.rangeHigh} ${unitLabel(gauge.unit)}`
      : '',
  ]
    .filter(Boolean)
    .join('; ');
}

/**
 * A gauge's expanded uncertainty (k = 2) in the base unit; without a gauge a reading is taken as exact. An
 * uncertainty is a difference: it takes the factor of a unit and never the zero of a scale.
 */
export const uncertaintyInBase = (gauge: GaugeInHand | null): number =>
  gauge === null ? 0 : difference(toBase(gauge.uncertainty, gauge.unit), toBase(0, gauge.unit));
