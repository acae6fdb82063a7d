import { Select, Text } from '@mantine/core';
import { useState } from 'react';
import type { ClockEntry, ClockedHours } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { wallAt } from '../../common/clock/time-text.ts';
import { useFormat } from '../../common/format.ts';
import { useShop } from '../../common/shop.tsx';
import { EntryRow } from './entry-row.tsx';
import classes from './hours.module.css';

const EVERYBODY = 'everybody';

interface EntriesCardProps {
  hours: ClockedHours;
  onCorrect: (entry: ClockEntry) => void;
}

/** Every entry of the period, the latest day first, with what became of it. */
export function EntriesCard({ hours, onCorrect }: EntriesCardProps) {
  const { timeZone } = useShop();
  const format = useFormat();
  const [person, setPerson] = useState(EVERYBODY);
  const shown = hours.entries.filter(({ staffId }) => person === EVERYBODY || staffId === person);
  const days = [
    ...Map.groupBy(shown, ({ startedAt }) => wallAt(startedAt, timeZone).date),
  ].toReversed();

  return (
    <Card
      title="Entries"
      flush
      aside={
        <Select
          aria-label="Whose entries"
          size="sm"
          w="13rem"
          data={[
            { value: EVERYBODY, label: 'Everybody' },
            ...hours.people.map(({ staffId, name }) => ({ value: staffId, label: name })),
          ]}
          value={person}
          onChange={(value) => setPerson(value ?? EVERYBODY)}
        />
      }
    >
      {days.length === 0 && (
        <Text c="dimmed" size="sm" px="md" pb="md">
          Nobody clocked on in this time. Hours that were forgotten can be entered afterwards.
        </Text>
      )}
      {days.map(([date, entries]) => (
        <section key={date} aria-label={format.date(date)}>
          <h3 className={classes.dayHead}>{format.date(date)}</h3>
          <ul className={classes.rows}>
            {entries.map((entry) => (
              <EntryRow key={entry.id} entry={entry} onCorrect={() => onCorrect(entry)} />
            ))}
          </ul>
        </section>
      ))}
    </Card>
  );
}
