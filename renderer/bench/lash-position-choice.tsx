import { Button, Group, Text } from '@mantine/core';
import { IconEngine } from '@tabler/icons-react';
import { useEffect, useId, useRef } from 'react';
import {
  LASH_POSITION_LABELS,
  LASH_POSITIONS,
  type LashPosition,
} from '../../shared/work/bench/lash-position.ts';
import classes from './bench.module.css';

/** Asks where the engine stands before valve lash is read: nothing can be typed until it is said. */
export function AskLashPosition({
  cylinder,
  onChoose,
}: {
  /** Named when the engine has more than one. */
  readonly cylinder: number | null;
  readonly onChoose: (position: LashPosition) => void;
}) {
  const heading = useId();
  const words = useId();
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <fieldset aria-labelledby={heading} aria-describedby={words} className={classes.question}>
      <Group gap="sm" wrap="nowrap" align="flex-start">
        <IconEngine size={32} aria-hidden className={classes.cautionMark} />
        <div>
          <Text id={heading} fz={20} fw={700} lh={1.2} c="inherit">
            Where does {cylinder === null ? 'the engine' : `cylinder ${cylinder}`} stand?
          </Text>
          <Text id={words} c="inherit">
            Plug lead off and earthed. Turn the engine by hand to the compression stroke: both
            valves closed, the piston at the top. A compression release may hold one open at dead
            centre; then just past it, as the source says.
          </Text>
        </div>
      </Group>
      <Group gap="sm" mt="sm">
        {LASH_POSITIONS.map((position, index) => (
          <Button
            key={position}
            ref={index === 0 ? first : undefined}
            size="lg"
            h="auto"
            mih={56}
            py={6}
            classNames={{ label: classes.wrapping }}
            variant={index === 0 ? 'filled' : 'default'}
            onClick={() => onChoose(position)}
          >
            {capitalised(LASH_POSITION_LABELS[position])}
          </Button>
        ))}
      </Group>
    </fieldset>
  );
}

/** Where the engine was said to stand, with the way back. */
export function LashPositionLine({
  position,
  onChange,
}: {
  readonly position: LashPosition;
  readonly onChange: () => void;
}) {
  return (
    <Group gap="xs">
      <IconEngine size={20} aria-hidden />
      <Text size="sm">Engine stands: {LASH_POSITION_LABELS[position]}.</Text>
      <Button variant="subtle" size="sm" mih={44} onClick={onChange}>
        It was turned
      </Button>
    </Group>
  );
}

const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
