import { Badge, Button, Group, Text } from '@mantine/core';
import { IconClockPlay, IconPencil, IconStrikethrough } from '@tabler/icons-react';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import { lastedWords } from '../../common/clock/time-text.ts';
import { useFormat } from '../../common/format.ts';
import { changeSentence } from './change-words.ts';
import { EntryWhat } from './entry-what.tsx';
import classes from './hours.module.css';

interface EntryRowProps {
  entry: ClockEntry;
  onCorrect: () => void;
}

/** One entry as it stands, and behind it all that became of it. */
export function EntryRow({ entry, onCorrect }: EntryRowProps) {
  const format = useFormat();
  const { startedAt, endedAt, struckOut, changes } = entry;
  const corrected = changes.some(({ what }) => what === 'corrected');
  const times =
    endedAt === null
      ? `since ${format.time(startedAt)}`
      : `${format.time(startedAt)} – ${format.time(endedAt)}`;
  return (
    <li className={classes.entry} data-struck={struckOut}>
      <span className={classes.who}>
        <span className={classes.name}>{entry.staffName}</span>
        <span className={classes.quiet}>{times}</span>
      </span>
      <EntryWhat entry={entry} />
      <span className={classes.lasted}>
        {struckOut ? <s>{lastedWords(entry.minutes)}</s> : lastedWords(entry.minutes)}
      </span>
      <Group gap="xs" justify="flex-end">
        {struckOut && (
          <Badge
            variant="light"
            color="red"
            leftSection={<IconStrikethrough size={15} aria-hidden />}
          >
            Struck out
          </Badge>
        )}
        {!struckOut && endedAt === null && (
          <Badge
            variant="light"
            color="petrol"
            leftSection={<IconClockPlay size={15} aria-hidden />}
          >
            Running
          </Badge>
        )}
        {!struckOut && corrected && (
          <Badge variant="light" color="gray" leftSection={<IconPencil size={15} aria-hidden />}>
            Corrected
          </Badge>
        )}
        {!struckOut && (
          <Button
            variant="subtle"
            size="sm"
            onClick={onCorrect}
            aria-label={`Correct ${entry.staffName}, ${times}`}
          >
            Correct
          </Button>
        )}
      </Group>
      {(struckOut || corrected || changes[0]?.reason !== '') && (
        <details className={classes.history}>
          <summary>What became of it</summary>
          <ol>
            {changes.map((change) => (
              <li key={`${change.at} ${change.what}`}>
                <Text size="sm" span>
                  {changeSentence(change, format)}
                </Text>
              </li>
            ))}
          </ol>
        </details>
      )}
    </li>
  );
}
