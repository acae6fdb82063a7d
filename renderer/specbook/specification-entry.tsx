import { Anchor, Button, Text } from '@mantine/core';
import { IconArrowUpRight } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { Specification } from '../../shared/contract/specbook.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import { wearLimitWords } from '../../shared/work/specbook/wear-limit.ts';
import { StandingBadge } from '../common/badges.tsx';
import { useFormat } from '../common/format.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import { ConflictNote } from './conflict-note.tsx';
import { EarlierRevisions } from './revision-list.tsx';
import classes from './specbook.module.css';
import { fastenerWords, sourceWords } from './specification-words.ts';

/** A specification as its source prints it, its standing, what speaks against it, and what it was before. */
export function SpecificationEntry({
  specification,
  wanted,
  onRevise,
  onConfirm,
  onContradict,
}: {
  readonly specification: Specification;
  /** Somebody came here for this one. */
  readonly wanted: boolean;
  readonly onRevise: () => void;
  readonly onConfirm: () => void;
  readonly onContradict: () => void;
}) {
  const format = useFormat();
  const label = FEATURE_LABELS[specification.feature];
  const unit = unitLabel(specification.unit);
  const { inheritedFrom } = specification;
  const revise = inheritedFrom === null ? 'Revise' : 'State its own';
  return (
    <article aria-label={label} className={classes.specification} data-wanted={wanted}>
      <div>
        <div className={classes.named}>
          <Text fw={600}>{label}</Text>
          <StandingBadge standing={specification.standing} />
        </div>
        <div className={classes.limits}>{printedLimits(specification)}</div>
        <Text size="sm">
          {[
            specification.aim === '' ? '' : `aim ${specification.aim} ${unit}`,
            specification.wearLimit === ''
              ? ''
              : `wear limit ${wearLimitWords(specification)} ${unit}`,
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
        {inheritedFrom !== null && (
          <Text size="sm" className={classes.inherited}>
            <IconArrowUpRight size={16} aria-hidden /> From the family,{' '}
            <Anchor component={Link} to={`/spec-book/${inheritedFrom.id}`} inherit>
              {inheritedFrom.make} {inheritedFrom.model}
            </Anchor>
          </Text>
        )}
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
        <Button
          size="compact-sm"
          variant={specification.standing === 'confirmed' ? 'subtle' : 'light'}
          onClick={onConfirm}
          aria-label={`Confirm: ${label}`}
        >
          Confirm…
        </Button>
        <Button
          size="compact-sm"
          variant="subtle"
          onClick={onRevise}
          aria-label={`${revise}: ${label}`}
        >
          {revise}…
        </Button>
        <Button
          size="compact-sm"
          variant="subtle"
          onClick={onContradict}
          aria-label={`Other figures: ${label}`}
        >
          Other figures…
        </Button>
      </div>
      {specification.contradictions.length > 0 && (
        <div className={classes.earlier}>
          <ConflictNote specification={specification} />
        </div>
      )}
      <EarlierRevisions specification={specification} />
    </article>
  );
}
