import { Button, Group, Text } from '@mantine/core';
import type { Specification } from '../../shared/contract/specbook.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import { StandingBadge } from '../common/badges.tsx';
import { useFormat } from '../common/format.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import classes from './specbook.module.css';
import { fastenerWords, sourceWords } from './specification-words.ts';

/** A specification as its source prints it, its standing, and what it was before. */
export function SpecificationEntry({
  specification,
  earlier,
  wanted,
  onRevise,
  onConfirm,
}: {
  readonly specification: Specification;
  /** Newest first. */
  readonly earlier: readonly Specification[];
  /** Somebody came here for this one. */
  readonly wanted: boolean;
  readonly onRevise: () => void;
  readonly onConfirm: () => void;
}) {
  const format = useFormat();
  const label = FEATURE_LABELS[specification.feature];
  const unit = unitLabel(specification.unit);
  return (
    <article aria-label={label} className={classes.specification} data-wanted={wanted}>
      <div>
        <Text fw={600}>{label}</Text>
        <div className={classes.limits}>{printedLimits(specification)}</div>
        <Text size="sm">
          {[
            specification.aim === '' ? '' : `aim ${specification.aim} ${unit}`,
            specification.wearLimit === '' ? '' : `wear limit ${specification.wearLimit} ${unit}`,
            specification.condition,
          ]
            .filter((words) => words !== '')
            .join(' · ')}
        </Text>
        {specification.fastener !== null && (
          <Text size="sm">{fastenerWords(specification.fastener)}</Text>
        )}
      </div>
      <div>
        <Text>{sourceWords(specification.source, specification.page)}</Text>
        <Text size="sm" c="dimmed">
          Revision {specification.revision}, entered by {specification.enteredBy},{' '}
          {format.instant(specification.enteredAt)}
        </Text>
        {specification.confirmations.map((confirmation) => (
          <Text key={`${confirmation.by} ${confirmation.at}`} size="sm">
            Confirmed by {confirmation.by} against{' '}
            {sourceWords(confirmation.source, confirmation.page)}, {format.instant(confirmation.at)}
          </Text>
        ))}
      </div>
      <div className={classes.actions}>
        <StandingBadge standing={specification.standing} />
        <Group gap={6} wrap="nowrap">
          <Button size="sm" variant="subtle" onClick={onRevise} aria-label={`Revise: ${label}`}>
            Revise…
          </Button>
          <Button size="sm" variant="default" onClick={onConfirm} aria-label={`Confirm: ${label}`}>
            Confirm…
          </Button>
        </Group>
      </div>
      {earlier.length > 0 && (
        <details className={classes.earlier}>
          <summary>
            <Text span size="sm">
              {earlier.length} earlier {earlier.length === 1 ? 'revision' : 'revisions'}
            </Text>
          </summary>
          <ul>
            {earlier.map((old) => (
              <li key={old.id}>
                <Text size="sm">
                  Revision {old.revision}: {printedLimits(old)} ·{' '}
                  {sourceWords(old.source, old.page)} · {old.enteredBy},{' '}
                  {format.instant(old.enteredAt)}
                </Text>
              </li>
            ))}
          </ul>
        </details>
      )}
    </article>
  );
}
