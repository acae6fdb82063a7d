import { Text } from '@mantine/core';
import { IconArrowsDiff } from '@tabler/icons-react';
import type { Specification } from '../../shared/contract/specbook.ts';
import { useFormat } from '../common/format.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import classes from './specbook.module.css';
import { sourceWords } from './specification-words.ts';

/** Two sources or more that print different figures, side by side; nothing when they don't. */
export function ConflictNote({
  specification,
  settled = false,
}: {
  readonly specification: Specification;
  /** A later revision has settled it. */
  readonly settled?: boolean;
}) {
  const format = useFormat();
  if (specification.contradictions.length === 0) return null;
  return (
    <section className={classes.conflict} aria-label="Sources disagree">
      <Text fw={600} className={classes.conflictTitle}>
        <IconArrowsDiff size={20} aria-hidden /> Sources disagree
      </Text>
      <ul className={classes.sides}>
        <li>
          <Text size="sm" c="dimmed">
            In the book
          </Text>
          <div className={classes.side}>{printedLimits(specification)}</div>
          <Text size="sm">{sourceWords(specification.source, specification.page)}</Text>
        </li>
        {specification.contradictions.map((other) => (
          <li key={`${other.source.id} ${other.at}`}>
            <Text size="sm" c="dimmed">
              Printed elsewhere
            </Text>
            <div className={classes.side}>{printedLimits(other)}</div>
            <Text size="sm">{sourceWords(other.source, other.page)}</Text>
            <Text size="sm" c="dimmed">
              Noted by {other.by}, {format.instant(other.at)}
            </Text>
          </li>
        ))}
      </ul>
      {!settled && (
        <Text size="sm">
          Readings are judged by the figure in the book. Find out which holds for this engine, then
          add a revision that says so: until then it can’t be confirmed.
        </Text>
      )}
    </section>
  );
}
