import { Button, Group, Stack, Text } from '@mantine/core';
import { IconQuestionMark } from '@tabler/icons-react';
import { type KeyboardEvent, useEffect, useId, useRef } from 'react';
import { display, unitLabel } from '../../shared/trade/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { likelyFigure, SLIP_SENTENCES } from '../../shared/work/bench/slip-words.ts';
import { bandWords, hasBand } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';
import type { AskedReading } from './reading-queue.ts';

/** What a gauge types on. */
const OF_A_FIGURE = /^[\d.,-]$/;

/**
 * Asks about a reading that is likelier a slip of the hand. The focus comes to the question itself, so that
 * a second Enter (or a gauge that types one) takes neither answer; figures typed on go to the field, where
 * the next place waits.
 */
export function SlipQuestion({
  asked: { slip, input, label, band },
  wantsFocus,
  onTake,
  onKeep,
  onBack,
  onTypedOn,
}: {
  readonly asked: AskedReading;
  /** Not while something is being typed. */
  readonly wantsFocus: boolean;
  readonly onTake: (likely: string) => void;
  readonly onKeep: () => void;
  readonly onBack: () => void;
  readonly onTypedOn: () => void;
}) {
  const frame = useRef<HTMLFieldSetElement>(null);
  const focus = useRef(wantsFocus);
  const heading = useId();
  const words = useId();
  const unit = unitLabel(slip.unit);
  const likely = slip.likely === null ? null : likelyFigure(slip.likely);
  const take = () => (likely === null ? undefined : onTake(likely));
  useEffect(() => {
    if (focus.current) frame.current?.focus();
  }, []);

  const answer = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (OF_A_FIGURE.test(event.key)) return onTypedOn();
    const act = { t: take, k: onKeep, escape: onBack }[event.key.toLowerCase()];
    if (act === undefined) return;
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
          <IconQuestionMark size={32} aria-hidden className={classes.cautionMark} />
          <Text id={heading} fz={28} fw={700} lh={1.1} className={classes.unbroken}>
            {likely === null
              ? 'Really?'
              : `${likely}${slip.unit === input.unit ? '' : ` ${unit}`}?`}
          </Text>
          <Text c="inherit">
            {label === '' ? '' : `${label}. `}Typed: {asTyped(input)}. {heldAgainst(slip.beside)}
          </Text>
        </Group>
        <Text id={words} c="inherit">
          {SLIP_SENTENCES[slip.kind]} Choose deliberately: Enter takes neither.
        </Text>
        <Group gap="sm">
          {likely !== null && (
            <Button size="lg" h={48} onClick={take} aria-keyshortcuts="T">
              Take {likely} {unit}
            </Button>
          )}
          <Button size="lg" h={48} variant="default" onClick={onKeep} aria-keyshortcuts="K">
            Keep {input.text} as typed
          </Button>
        </Group>
        <Group gap="sm" justify="space-between">
          <Text size="sm" c="inherit">
            Keys: {likely === null ? '' : 'T takes, '}K keeps, Esc goes back to the field.
          </Text>
          <Button variant="subtle" color="gray" onClick={onBack}>
            Type again
          </Button>
        </Group>
      </Stack>
    </fieldset>
  );

  /** What makes the reading look wrong: its band, else the readings beside it. */
  function heldAgainst(beside: readonly number[]): string {
    if (hasBand(band)) return `Band: ${bandWords(band, input.unit)}.`;
    if (beside.length === 0) return '';
    return `Beside it: ${beside.map((size) => display(size, input.unit)).join(', ')}.`;
  }
}
