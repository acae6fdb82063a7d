import { Button, Group, Stack, Text } from '@mantine/core';
import { IconQuestionMark } from '@tabler/icons-react';
import { type KeyboardEvent, useEffect, useId, useRef } from 'react';
import { display, type SlipKind, unitLabel } from '../../shared/trade/index.ts';
import { likelyReading } from '../../shared/work/bench/likely-reading.ts';
import { bandWords, type SheetBand, slipSentence } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';
import type { BenchUnit } from './bench-habits.ts';

export interface Slip {
  readonly kind: SlipKind;
  /** In `unit`. */
  readonly likely: number;
  readonly unit: BenchUnit;
  /** As it was typed. */
  readonly text: string;
  /** In `unit`. */
  readonly value: number;
  /** The readings beside it that it was held against, base unit; empty when a band was. */
  readonly beside: readonly number[];
}

/**
 * Asks about a reading that a slip of the hand would explain. The focus comes to the question itself, so
 * that a second Enter (or a gauge that types one) takes neither answer.
 */
export function SlipQuestion({
  slip,
  band,
  busy,
  onTake,
  onKeep,
  onBack,
}: {
  readonly slip: Slip;
  readonly band: SheetBand;
  readonly busy: boolean;
  /** With the value that was offered, as it was shown. */
  readonly onTake: (likely: string) => void;
  readonly onKeep: () => void;
  readonly onBack: () => void;
}) {
  const frame = useRef<HTMLFieldSetElement>(null);
  const heading = useId();
  const words = useId();
  const unit = unitLabel(slip.unit);
  const likely = likelyReading(slip, slip.unit);
  useEffect(() => frame.current?.focus(), []);

  const answer = (event: KeyboardEvent) => {
    const act = { t: () => onTake(likely), k: onKeep, escape: onBack }[event.key.toLowerCase()];
    if (act === undefined || busy || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    act();
  };

  return (
    <fieldset
      ref={frame}
      tabIndex={-1}
      aria-labelledby={heading}
      aria-describedby={words}
      className={classes.question}
      onKeyDown={answer}
    >
      <Stack gap="sm">
        <Group gap="sm" align="center" wrap="nowrap">
          <IconQuestionMark size={32} aria-hidden />
          <Text id={heading} fz={28} fw={700} lh={1.1}>
            {likely}?
          </Text>
          <Text c="inherit">
            Typed: {slip.text}. {heldAgainst(slip, band)}.
          </Text>
        </Group>
        <Text id={words} c="inherit">
          {slipSentence(slip.kind, slip.value, slip.likely)} Choose deliberately: Enter takes
          neither.
        </Text>
        <Group gap="sm">
          <Button
            size="lg"
            h={48}
            onClick={() => onTake(likely)}
            loading={busy}
            aria-keyshortcuts="T"
          >
            Take {likely} {unit}
          </Button>
          <Button
            size="lg"
            h={48}
            variant="default"
            onClick={onKeep}
            disabled={busy}
            aria-keyshortcuts="K"
          >
            Keep {slip.text} as typed
          </Button>
        </Group>
        <Group gap="sm" justify="space-between">
          <Text size="sm" c="inherit">
            Keys: T takes, K keeps, Esc goes back to the field.
          </Text>
          <Button variant="subtle" color="gray" onClick={onBack} disabled={busy}>
            Type again
          </Button>
        </Group>
      </Stack>
    </fieldset>
  );
}

/** What makes the reading look wrong: its band, else the readings of its pair. */
const heldAgainst = ({ beside, unit }: Slip, band: SheetBand): string =>
  beside.length === 0
    ? `Band: ${bandWords(band, unit)}`
    : `Beside it: ${beside.map((size) => display(size, unit)).join(', ')}`;
