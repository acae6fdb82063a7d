import { Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Specification } from '../../shared/contract/specbook.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { changesBetween, type RevisedField } from '../../shared/work/specbook/revision-changes.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import { QueryView } from '../common/page.tsx';
import { ConflictNote } from './conflict-note.tsx';
import { FIELD_LABELS } from './revised-fields.ts';
import classes from './specbook.module.css';
import { fastenerWords, sourceWords } from './specification-words.ts';

/** What a specification was before, fetched when somebody opens it; nothing for a first revision. */
export function EarlierRevisions({ specification }: { readonly specification: Specification }) {
  const [opened, setOpened] = useState(false);
  const earlier = specification.revision - 1;
  if (earlier === 0) return null;
  return (
    <details className={classes.earlier} onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>
        <Text span size="sm">
          {earlier} earlier {earlier === 1 ? 'revision' : 'revisions'}, and what changed
        </Text>
      </summary>
      {opened && <Revisions specification={specification} />}
    </details>
  );
}

function Revisions({ specification }: { readonly specification: Specification }) {
  const { engineModelId, feature } = specification;
  const query = useQuery(
    deskQuery.specbook.revisions.queryOptions({ input: { engineModelId, feature } }),
  );
  return (
    <QueryView query={query}>
      {(revisions) => (
        <ol className={classes.revisions}>
          {revisions.slice(1).map((former, index) => {
            const next = revisions[index];
            return next !== undefined && <Earlier key={former.id} former={former} next={next} />;
          })}
        </ol>
      )}
    </QueryView>
  );
}

function Earlier({
  former,
  next,
}: {
  readonly former: Specification;
  readonly next: Specification;
}) {
  const format = useFormat();
  const changes = changesBetween(former, next);
  return (
    <li>
      <Text size="sm" fw={600}>
        Revision {former.revision}: {printedLimits(former)}
      </Text>
      <Text size="sm">
        {sourceWords(former.source, former.page)} · {former.enteredBy},{' '}
        {format.instant(former.enteredAt)}
      </Text>
      {former.confirmations.map((confirmation) => (
        <Text key={`${confirmation.by} ${confirmation.at}`} size="sm">
          Confirmed by {confirmation.by} against{' '}
          {sourceWords(confirmation.source, confirmation.page)}
        </Text>
      ))}
      <ConflictNote specification={former} settled />
      <Text size="sm" mt={4}>
        Revision {next.revision}, by {next.enteredBy}, {format.instant(next.enteredAt)}, changed:
        {changes.length === 0 && ' nothing'}
      </Text>
      {changes.length > 0 && (
        <ul>
          {changes.map((field) => (
            <li key={field}>
              <Text size="sm">
                {FIELD_LABELS[field]}: {said(former, field)} → <strong>{said(next, field)}</strong>
              </Text>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

function said(revision: Specification, field: RevisedField): string {
  if (field === 'source') return sourceWords(revision.source, '');
  if (field === 'fastener')
    return revision.fastener === null ? 'none' : fastenerWords(revision.fastener);
  if (field === 'unit') return unitLabel(revision.unit);
  return revision[field] === '' ? 'none' : revision[field];
}
