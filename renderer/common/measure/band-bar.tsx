import { useElementSize } from '@mantine/hooks';
import type { Verdict } from '../../../shared/contract/bench/index.ts';
import { display, displayNumber, type Unit } from '../../../shared/trade/index.ts';
import classes from './band-bar.module.css';
import { bandScale } from './band-scale.ts';
import { amountWords, bandWords, type SheetBand } from './measure-words.ts';

interface BandBarProps {
  readonly band: SheetBand;
  readonly aim: number | null;
  /** Base units; null while nothing is typed. */
  readonly value: number | null;
  readonly uncertainty: number;
  readonly verdict: Verdict | null;
  readonly unit: Unit;
}

const HEIGHT = 84;
const LINE = 40;
const INSET = 34;
const HALF = 13;

function inWords({ band, value, uncertainty, verdict, unit }: BandBarProps): string {
  const words = `Band ${bandWords(band, unit)}.`;
  if (value === null) return `${words} No reading yet.`;
  const spread = uncertainty > 0 ? `, give or take ${amountWords(uncertainty, unit)}` : '';
  return `${words} Reading ${display(value, unit)}${spread}: ${verdict ?? 'not judged'}.`;
}

/** The band drawn to scale with the reading and its uncertainty on it. */
export function BandBar(props: BandBarProps) {
  const { band, aim, value, uncertainty, verdict, unit } = props;
  const { ref, width: measured } = useElementSize();
  const width = Math.max(measured, 240);
  const scale = bandScale(band, value, uncertainty);
  const x = (at: number) =>
    INSET + ((at - scale.from) / (scale.to - scale.from)) * (width - 2 * INSET);
  const left = band.low === null ? INSET / 2 : x(band.low);
  const right = band.high === null ? width - INSET / 2 : x(band.high);
  const guard = uncertainty === 0 ? 0 : x(scale.from + uncertainty) - INSET;

  return (
    <div ref={ref} className={classes.frame}>
      <svg
        width={width}
        height={HEIGHT}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        role="img"
        aria-label={inWords(props)}
      >
        <line x1={4} x2={width - 4} y1={LINE} y2={LINE} className={classes.axis} />
        <rect
          x={left}
          y={LINE - HALF}
          width={Math.max(right - left, 2)}
          height={HALF * 2}
          className={classes.band}
        />
        {[band.low, band.high].map((limit, index) =>
          limit === null ? null : (
            <g key={index === 0 ? 'low' : 'high'}>
              {guard > 0.5 && (
                <rect
                  x={x(limit) - guard}
                  y={LINE - HALF}
                  width={guard * 2}
                  height={HALF * 2}
                  className={classes.guard}
                />
              )}
              <line
                x1={x(limit)}
                x2={x(limit)}
                y1={LINE - HALF - 5}
                y2={LINE + HALF + 5}
                className={classes.limit}
              />
            </g>
          ),
        )}
        <LimitLabels band={band} unit={unit} x={x} />
        {aim !== null && (
          <path d={`M ${x(aim) - 5} ${LINE + HALF + 9} h 10 l -5 -8 z`} className={classes.aim} />
        )}
        {value !== null && (
          <Mark
            at={scale.beyond === null ? x(value) : scale.beyond === 'left' ? 14 : width - 14}
            spread={guard}
            beyond={scale.beyond}
            verdict={verdict}
          />
        )}
      </svg>
    </div>
  );
}

function LimitLabels({
  band,
  unit,
  x,
}: {
  readonly band: SheetBand;
  readonly unit: Unit;
  readonly x: (at: number) => number;
}) {
  const close =
    band.low !== null && band.high !== null && Math.abs(x(band.high) - x(band.low)) < 90;
  const label = (limit: number, text: string, anchor: 'start' | 'middle' | 'end') => (
    <text x={x(limit)} y={HEIGHT - 8} textAnchor={anchor} className={classes.label}>
      {text}
    </text>
  );
  return (
    <>
      {band.low !== null &&
        label(band.low, displayNumber(band.low, unit), close ? 'end' : 'middle')}
      {band.high !== null &&
        band.high !== band.low &&
        label(band.high, display(band.high, unit), close ? 'start' : 'middle')}
    </>
  );
}

function Mark({
  at,
  spread,
  beyond,
  verdict,
}: {
  readonly at: number;
  readonly spread: number;
  readonly beyond: 'left' | 'right' | null;
  readonly verdict: Verdict | null;
}) {
  if (beyond !== null) {
    const tip = beyond === 'left' ? -10 : 10;
    return (
      <path
        d={`M ${at - tip} ${LINE - 10} L ${at + tip} ${LINE} L ${at - tip} ${LINE + 10} z`}
        className={classes.mark}
        data-verdict={verdict}
      />
    );
  }
  return (
    <g className={classes.mark} data-verdict={verdict}>
      {spread > 1 && (
        <path
          d={`M ${at - spread} ${LINE - 5} v 10 M ${at + spread} ${LINE - 5} v 10 M ${at - spread} ${LINE} H ${at + spread}`}
          className={classes.whisker}
        />
      )}
      <path d={`M ${at} ${LINE - 21} V ${LINE + 17}`} className={classes.whisker} />
      <path d={`M ${at} ${LINE - 9} l 8 9 l -8 9 l -8 -9 z`} />
      <path d={`M ${at - 7} ${LINE - 33} h 14 l -7 12 z`} />
    </g>
  );
}
