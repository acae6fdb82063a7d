import { Button, Text } from '@mantine/core';
import { IconArrowBackUp } from '@tabler/icons-react';
import type { Reading } from '../../shared/contract/bench/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { takenWords } from '../../shared/work/bench/slip-words.ts';
import { VerdictBadge } from '../common/badges.tsx';
import classes from './bench.module.css';

/** The reading that was recorded last, beside the field: what it was, its verdict, and the way to correct it. */
export function LastReading({
  reading,
  underWay,
  onCorrect,
}: {
  readonly reading: Reading | null;
  /** How many more are on their way to the desk. */
  readonly underWay: number;
  readonly onCorrect: (reading: Reading) => void;
}) {
  return (
    <div className={classes.last} role="status" aria-label="Last reading">
      {reading === null ? (
        <Text size="sm" c="dimmed">
          {underWay > 0 ? 'Recording …' : 'Nothing recorded here yet.'}
        </Text>
      ) : (
        <>
          <Text span size="sm">
            Last: {reading.placeLabel === '' ? '' : `${reading.placeLabel} `}
            <strong className={classes.lastValue}>{asTyped(reading)}</strong>
            {reading.typed !== null && ` (${takenWords({ ...reading, typed: reading.typed })})`}
          </Text>
          <VerdictBadge verdict={reading.verdict} />
          <Button
            variant="subtle"
            size="compact-md"
            mih={44}
            leftSection={<IconArrowBackUp size={18} aria-hidden />}
            onClick={() => onCorrect(reading)}
            aria-label={`Correct the last reading, ${asTyped(reading)}`}
          >
            Correct it
          </Button>
          {underWay > 0 && (
            <Text span size="sm" c="dimmed">
              {underWay} more on the way …
            </Text>
          )}
        </>
      )}
    </div>
  );
}
