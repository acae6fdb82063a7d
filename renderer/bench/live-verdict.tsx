import { Group, Stack, Text } from '@mantine/core';
import { display, unitLabel } from '../../shared/trade/index.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { BandBar } from '../common/measure/band-bar.tsx';
import { hasBand, likelyText, verdictSentence } from '../common/measure/measure-words.ts';
import type { BenchUnit } from './bench-habits.ts';
import type { LiveReading } from './live-reading.ts';
import { inOtherUnit } from './reading-words.ts';
import type { PlaceOnSheet } from './sheet-reading.ts';

/** The verdict on what stands in the field: the band drawn to scale, and the same in words. */
export function LiveVerdict({
  live,
  place,
  unit,
  uncertainty,
  gaugeNamed,
}: {
  readonly live: LiveReading;
  readonly place: PlaceOnSheet;
  readonly unit: BenchUnit;
  /** Expanded, base unit. */
  readonly uncertainty: number;
  readonly gaugeNamed: boolean;
}) {
  const read = live.state === 'read' ? live : null;
  return (
    <Stack gap={4}>
      {hasBand(place) && (
        <BandBar
          band={place}
          aim={place.aim}
          value={read?.valueBase ?? null}
          uncertainty={uncertainty}
          verdict={read?.verdict ?? null}
          unit={unit}
        />
      )}
      <div aria-live="polite" style={{ minHeight: '3.2rem' }}>
        {live.state === 'unreadable' && <Text c="red.8">{live.reason}</Text>}
        {live.state === 'empty' && (
          <Text c="dimmed" size="sm">
            {place.aim === null
              ? 'Type the reading, then Enter.'
              : `Aim ${display(place.aim, unit)}. Type the reading, then Enter.`}
          </Text>
        )}
        {read !== null && (
          <Group gap="xs" align="flex-start" wrap="nowrap">
            <span style={{ flex: 'none' }}>
              <VerdictBadge verdict={read.verdict} />
            </span>
            <Text size="sm">
              {read.verdict === 'no-band'
                ? 'No specification: recorded without a verdict.'
                : verdictSentence(
                    {
                      ...place,
                      ...read,
                      value: read.valueBase,
                      uncertainty,
                      verdict: read.verdict,
                    },
                    unit,
                  )}{' '}
              {read.unit !== unit && `That is ${display(read.valueBase, unit)}. `}
              {read.unit === unit &&
                inOtherUnit(read.valueBase, unit) !== '' &&
                `That is ${inOtherUnit(read.valueBase, unit)}. `}
              {read.verdict !== 'no-band' && !gaugeNamed && 'No gauge chosen: taken as exact. '}
              {read.slip !== null && (
                <strong>
                  {likelyText(read.slip.likely)} {unitLabel(read.unit)} would lie inside: a slip?
                </strong>
              )}
            </Text>
          </Group>
        )}
      </div>
    </Stack>
  );
}
