import { convert, type StatedGauge, type Unit, unitLabel } from '../../trade/index.ts';

/** What a gauge's register says of it, as far as a reading depends on it. */
export interface GaugeInHand extends StatedGauge {
  name: string;
  unit: Unit;
  rangeLow: number;
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
