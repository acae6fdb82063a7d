import { useElementSize } from '@mantine/hooks';
import { useId } from 'react';
import type { PlaceHistory } from '../../../shared/contract/bench/index.ts';
import { displayNumber, type Unit, unitLabel } from '../../../shared/trade/index.ts';
import { PHASE_LABELS, type Phase } from '../../../shared/work/vocabulary.ts';
import { useFormat } from '../../common/format.ts';
import classes from './history.module.css';
import { dateOfDay, type PlaceTrend } from './place-trend.ts';
import { along, type Scale, scaleFor } from './plot-scale.ts';

const HEIGHT = 320;
const LEFT = 74;
const RIGHT = 18;
const TOP = 16;
const BOTTOM = 46;
const LEAST = { hours: 20, dates: 60 } as const;

interface WearPlotProps {
  readonly title: string;
  readonly place: PlaceHistory;
  readonly shown: PlaceTrend;
  readonly unit: Unit;
  /** All that the plot says, for whoever doesn't see it. */
  readonly description: string;
}

/** The readings of a place over time or hours, with their line, the band and the wear limit. */
export function WearPlot({ title, place, shown, unit, description }: WearPlotProps) {
  const { ref, width: measured } = useElementSize();
  const width = Math.max(measured, 320);
  const ids = useId();
  const { axis, plotted, trend } = shown;
  const reach = trend.kind === 'line' && trend.reach.kind === 'at' ? trend.reach.x : null;
  const xs = scaleFor(
    [...plotted.map(({ x }) => x), ...(reach === null ? [] : [reach])],
    width < 560 ? 3 : 5,
    LEAST[axis],
  );
  const limits = [place.low, place.high, place.wearLimit].flatMap((limit) => limit ?? []);
  const values = plotted.flatMap(({ point }) => [
    point.value - point.uncertainty,
    point.value + point.uncertainty,
  ]);
  const ys = scaleFor([...values, ...limits], 5, 0.001);
  const px = (x: number) => along(xs, x, LEFT, width - RIGHT);
  const py = (y: number) => along(ys, y, HEIGHT - BOTTOM, TOP);
  return (
    <div ref={ref} className={classes.plotFrame}>
      <svg
        width={width}
        height={HEIGHT}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        role="img"
        aria-labelledby={`${ids}-title`}
        aria-describedby={`${ids}-desc`}
        className={classes.plot}
      >
        <title id={`${ids}-title`}>{title}</title>
        <desc id={`${ids}-desc`}>{description}</desc>
        <Axes xs={xs} ys={ys} px={px} py={py} width={width} axis={axis} unit={unit} />
        <Limits place={place} py={py} width={width} />
        {trend.kind === 'line' && <TrendLine trend={trend} reach={reach} px={px} py={py} />}
        {plotted.map(({ point, x }) => (
          <g key={`${point.jobId} ${point.phase}`} className={classes.mark}>
            {point.uncertainty > 0 && (
              <path
                d={`M ${px(x)} ${py(point.value - point.uncertainty)} V ${py(point.value + point.uncertainty)}`}
                className={classes.whisker}
              />
            )}
            <PhaseMark phase={point.phase} x={px(x)} y={py(point.value)} />
          </g>
        ))}
      </svg>
      <p className={classes.legend}>
        {[...new Set(plotted.map(({ point }) => point.phase))].map((phase) => (
          <span key={phase}>
            <svg width={18} height={18} aria-hidden="true" className={classes.mark}>
              <PhaseMark phase={phase} x={9} y={9} />
            </svg>
            {PHASE_LABELS[phase]}
          </span>
        ))}
        {place.high !== null && place.low !== null && (
          <span>
            <i className={classes.bandSwatch} /> Band of the spec book
          </span>
        )}
        {place.wearLimit !== null && (
          <span>
            <i className={classes.limitSwatch} /> Wear limit
          </span>
        )}
      </p>
    </div>
  );
}

interface Placed {
  readonly px: (x: number) => number;
  readonly py: (y: number) => number;
}

function Axes(
  props: Placed & {
    readonly xs: Scale;
    readonly ys: Scale;
    readonly width: number;
    readonly axis: PlaceTrend['axis'];
    readonly unit: Unit;
  },
) {
  const format = useFormat();
  const { xs, ys, px, py, width } = props;
  const xLabel = (x: number): string => {
    if (props.axis === 'hours') return String(x);
    const day = dateOfDay(x);
    return day === null ? '' : format.day(`${day}T12:00:00Z`);
  };
  return (
    <g className={classes.axes}>
      {ys.ticks.map((y) => (
        <g key={y}>
          <line x1={LEFT} x2={width - RIGHT} y1={py(y)} y2={py(y)} className={classes.grid} />
          <text x={LEFT - 8} y={py(y) + 5} textAnchor="end">
            {displayNumber(y, props.unit)}
          </text>
        </g>
      ))}
      {xs.ticks.map((x) => (
        <g key={x}>
          <line
            x1={px(x)}
            x2={px(x)}
            y1={HEIGHT - BOTTOM}
            y2={HEIGHT - BOTTOM + 6}
            className={classes.tick}
          />
          <text x={px(x)} y={HEIGHT - BOTTOM + 22} textAnchor="middle">
            {xLabel(x)}
          </text>
        </g>
      ))}
      <path
        d={`M ${LEFT} ${TOP} V ${HEIGHT - BOTTOM} H ${width - RIGHT}`}
        className={classes.tick}
        fill="none"
      />
      <text x={LEFT} y={HEIGHT - 4} textAnchor="start">
        {props.axis === 'hours' ? 'Running hours' : 'Date'} · {unitLabel(props.unit)}
      </text>
    </g>
  );
}

function Limits({
  place,
  py,
  width,
}: Pick<Placed, 'py'> & { readonly place: PlaceHistory; readonly width: number }) {
  const { low, high, wearLimit } = place;
  return (
    <g>
      {low !== null && high !== null && (
        <rect
          x={LEFT}
          width={width - LEFT - RIGHT}
          y={py(high)}
          height={Math.max(py(low) - py(high), 2)}
          className={classes.band}
        />
      )}
      {wearLimit !== null && (
        <line
          x1={LEFT}
          x2={width - RIGHT}
          y1={py(wearLimit)}
          y2={py(wearLimit)}
          className={classes.limit}
        />
      )}
    </g>
  );
}

/** Solid through the readings it was fitted to, broken where it goes beyond them. */
function TrendLine({
  trend,
  reach,
  px,
  py,
}: Placed & {
  readonly trend: Extract<PlaceTrend['trend'], { kind: 'line' }>;
  readonly reach: number | null;
}) {
  const at = trend.used.map(({ x }) => x);
  const first = Math.min(...at);
  const last = Math.max(...at);
  const y = (x: number) => py(trend.line.intercept + trend.line.slope * x);
  return (
    <g className={classes.line}>
      <line x1={px(first)} y1={y(first)} x2={px(last)} y2={y(last)} />
      {reach !== null && (
        <line x1={px(last)} y1={y(last)} x2={px(reach)} y2={y(reach)} className={classes.beyond} />
      )}
    </g>
  );
}

/** Phases differ by shape, not by colour. */
function PhaseMark({
  phase,
  x,
  y,
}: {
  readonly phase: Phase;
  readonly x: number;
  readonly y: number;
}) {
  if (phase === 'as-received') return <circle cx={x} cy={y} r={6} />;
  if (phase === 'after-machining') return <rect x={x - 5.5} y={y - 5.5} width={11} height={11} />;
  return <path d={`M ${x} ${y - 8} l 8 8 l -8 8 l -8 -8 z`} />;
}
