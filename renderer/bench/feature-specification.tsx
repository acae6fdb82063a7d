import { Alert, Anchor, Group, Stack, Text } from '@mantine/core';
import { IconProgressHelp } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { FeatureOnSheet } from '../../shared/contract/bench/index.ts';
import type { EngineModelId, JobCode } from '../../shared/contract/ids.ts';
import { display, unitLabel } from '../../shared/trade/index.ts';
import { otherUnit } from '../../shared/work/bench/reading-in-words.ts';
import { wearLimitWords } from '../../shared/work/specbook/wear-limit.ts';
import { SOURCE_KIND_LABELS } from '../../shared/work/vocabulary.ts';
import { StandingBadge } from '../common/badges.tsx';
import { bandWords, hasBand, printedLimits } from '../common/measure/measure-words.ts';
import { ConflictNote } from '../specbook/conflict-note.tsx';
import classes from './bench.module.css';

/** The band as its source prints it, where it stands there, and whether anybody checked it. */
export function FeatureSpecification({
  feature,
  engineModelId,
  jobCode,
}: {
  readonly feature: FeatureOnSheet;
  readonly engineModelId: EngineModelId;
  readonly jobCode: JobCode;
}) {
  const specification = feature.specification;
  const book = `/spec-book/${engineModelId}?for=${jobCode}&feature=${feature.feature}`;
  if (specification === null)
    return (
      <Alert color="gray" variant="light" title="No specification in the spec book">
        Readings are kept, without a verdict.{' '}
        <Anchor component={Link} to={`${book}&add=1`} inherit>
          Add the specification
        </Anchor>
      </Alert>
    );
  const { source } = specification;
  const earlier = feature.places
    .flatMap(({ readings }) => readings)
    .filter(
      ({ superseded, specificationId }) =>
        !superseded && specificationId !== null && specificationId !== specification.id,
    ).length;
  const other = otherUnit(specification.unit);
  const band = { low: specification.lowBase, high: specification.highBase };
  return (
    <Stack gap={6}>
      <div className={classes.facts}>
        <span className={classes.band}>{printedLimits(specification)}</span>
        {other !== undefined && hasBand(band) && <Text c="dimmed">({bandWords(band, other)})</Text>}
        {specification.aimBase !== null && (
          <Text>aim {display(specification.aimBase, specification.unit)}</Text>
        )}
        {specification.wearLimit !== '' && (
          <Text>
            wear limit {wearLimitWords(specification)} {unitLabel(specification.unit)}
          </Text>
        )}
        {specification.condition !== '' && <Text>{specification.condition}</Text>}
        <StandingBadge standing={specification.standing} />
      </div>
      <Group gap="xs">
        <Text size="sm" c="dimmed">
          {SOURCE_KIND_LABELS[source.kind]}: {source.title}
          {source.edition !== '' && `, ${source.edition}`}
          {specification.page !== '' && `, page\u00A0${specification.page}`}
          {specification.revision > 1 && ` · revision ${specification.revision}`}
        </Text>
        <Anchor component={Link} to={book} size="sm">
          Spec book
        </Anchor>
      </Group>
      {specification.inheritedFrom !== null && (
        <Text size="sm" c="dimmed">
          As in the family, {specification.inheritedFrom.make} {specification.inheritedFrom.model}.
        </Text>
      )}
      <ConflictNote specification={specification} />
      {earlier > 0 && (
        <Text size="sm">
          <strong>The spec book has moved on:</strong> {earlier}{' '}
          {earlier === 1 ? 'reading was' : 'readings were'} judged by an earlier specification and{' '}
          {earlier === 1 ? 'keeps' : 'keep'} it.{' '}
          <Anchor component={Link} to={book} inherit>
            See what changed
          </Anchor>
        </Text>
      )}
      {specification.standing === 'unconfirmed' && (
        <div className={classes.unconfirmed}>
          <IconProgressHelp size={20} aria-hidden />
          <Text size="sm">
            <strong>Unconfirmed:</strong> nobody has checked this figure against a source that
            carries weight. The paper will say so.
          </Text>
        </div>
      )}
    </Stack>
  );
}
