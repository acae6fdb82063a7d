import { Stack, Text, VisuallyHidden } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import { display, type Unit, unitLabel } from '../../shared/trade/index.ts';
import { likelyReading } from '../../shared/work/bench/likely-reading.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { BandBar } from '../common/measure/band-bar.tsx';
import { hasBand, verdictSentence } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';
import type { BenchUnit } from './bench-habits.ts';
import type { LiveReading } from './live-reading.ts';
import { inOtherUnit } from './reading-words.ts';
import { whatSettles } from './settle-words.ts';
import { type PlaceOnSheet, targetOf } from './sheet-reading.ts';

/** The verdict on what stands in the field: the band drawn to scale, and the same in words. */
export function LiveVerdict({
  text,
  live,
  place,
  unit,
  uncertainty,
  gauge,
}: {
  /** What stands in the field. */
  readonly text: string;
  readonly live: LiveReading;
  readonly place: PlaceOnSheet;
  readonly unit: BenchUnit;
  /** Expanded, base unit. */
  readonly uncertainty: number;
  readonly gauge: Gauge | null;
}) {
  const read = live.state === 'read' ? live : null;
  const target = targetOf(place);
  const [rested] = useDebouncedValue(text, 450);
  const settled = rested === text;
  const words =
    read === null
      ? ''
      : [
          read.verdict === 'no-band'
            ? 'No specification: recorded without a verdict.'
            : verdictSentence(
                { ...place, value: read.valueBase, uncertainty, verdict: read.verdict },
                unit,
              ),
          read.verdict === 'too-close' ? whatSettles(read.valueBase, place, gauge, unit) : '',
          inWords(read, unit),
          read.verdict === 'no-band' || gauge !== null ? '' : 'No gauge chosen: taken as exact.',
        ]
          .filter((part) => part !== '')
          .join(' ');
  const slip =
    read === null || read.slip === null
      ? ''
      : `${likelyReading(read.slip, read.unit)} ${unitLabel(read.unit)} would ${hasBand(place) ? 'lie inside' : 'agree with what stands beside it'}: a slip?`;
  return (
    <Stack gap={4}>
      {hasBand(place) && (
        <BandBar
          band={place}
          aim={target}
          value={read?.valueBase ?? null}
          uncertainty={uncertainty}
          verdict={read?.verdict ?? null}
          unit={unit}
        />
      )}
      <div className={classes.liveWords}>
        {live.state === 'unreadable' && settled && <Text c="error">{live.reason}</Text>}
        {(live.state === 'empty' || (live.state === 'unreadable' && !settled)) && (
          <Text c="dimmed" size="sm">
            {target === null ? '' : `Aim ${display(target, unit)}. `}Type the reading, then Enter.
          </Text>
        )}
        {read !== null && (
          <div className={classes.liveVerdict}>
            <span className={classes.liveBadge}>
              <VerdictBadge verdict={read.verdict} />
            </span>
            <Text size="sm">
              {words} {slip !== '' && settled && <strong>{slip}</strong>}
            </Text>
          </div>
        )}
      </div>
      {/* Said aloud once the typing has come to rest, not at every key. */}
      <VisuallyHidden aria-live="polite">
        {settled && read !== null && `${read.verdict.replace('-', ' ')}. ${words} ${slip}`}
        {settled && live.state === 'unreadable' && live.reason}
      </VisuallyHidden>
    </Stack>
  );
}

/** The reading in the unit of the screen when another was typed, else in the other system's. */
function inWords(read: { valueBase: number; unit: Unit }, unit: Unit): string {
  const words =
    read.unit === unit ? inOtherUnit(read.valueBase, unit) : display(read.valueBase, unit);
  return words === '' ? '' : `That is ${words}.`;
}
