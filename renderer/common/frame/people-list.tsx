import { Avatar, Kbd } from '@mantine/core';
import { IconCheck } from '@tabler/icons-react';
import { useEffect } from 'react';
import type { Staff } from '../../../shared/contract/office.ts';
import { STAFF_ROLE_LABELS } from '../../../shared/work/vocabulary.ts';
import { isTyping } from '../keyboard.ts';
import { useStation } from '../station.tsx';
import classes from './people-list.module.css';

/** Everybody who may be at this station: one click, or the digit before the name. */
export function PeopleList({ onChosen }: { onChosen: () => void }) {
  const { people, staff, choose } = useStation();

  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
      const person = /^[1-9]$/.test(event.key) ? people[Number(event.key) - 1] : undefined;
      if (person === undefined) return;
      event.preventDefault();
      choose(person.id);
      onChosen();
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [people, choose, onChosen]);

  return (
    <ul className={classes.people}>
      {people.map((person, index) => (
        <li key={person.id}>
          <button
            type="button"
            className={classes.person}
            data-autofocus={index === 0 ? true : undefined}
            aria-current={person.id === staff?.id ? 'true' : undefined}
            onClick={() => {
              choose(person.id);
              onChosen();
            }}
          >
            <PersonFace person={person} size={40} />
            <span className={classes.words}>
              <span className={classes.name}>{person.name}</span>
              <span className={classes.role}>{STAFF_ROLE_LABELS[person.role]}</span>
            </span>
            {person.id === staff?.id && <IconCheck size={20} aria-label="at this station now" />}
            {index < 9 && <Kbd aria-hidden>{index + 1}</Kbd>}
          </button>
        </li>
      ))}
    </ul>
  );
}

export function PersonFace({ person, size }: { person: Staff; size: number }) {
  return (
    <Avatar size={size} radius="xl" color="petrol" variant="filled" aria-hidden>
      {initials(person.name)}
    </Avatar>
  );
}

function initials(name: string): string {
  const words = name.split(/\s+/).filter((word) => word !== '');
  const first = words[0] ?? '';
  const last = words.length > 1 ? (words.at(-1) ?? '') : '';
  return [first, last].map((word) => [...word][0] ?? '').join('');
}
