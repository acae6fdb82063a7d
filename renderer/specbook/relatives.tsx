import { Anchor, Button, Group, Text } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobCode } from '../../shared/contract/ids.ts';
import type { EngineModel, NamedModel } from '../../shared/contract/specbook.ts';
import { modelAddress } from './book-errand.ts';

/** A variant's family, or a family's variants. */
export function Relatives({
  model,
  variants,
  job,
  onAdd,
}: {
  readonly model: EngineModel;
  readonly variants: readonly NamedModel[];
  readonly job: JobCode | null;
  readonly onAdd: () => void;
}) {
  const link = (named: NamedModel) => (
    <Anchor key={named.id} component={Link} to={modelAddress(named.id, job)}>
      {named.make} {named.model}
    </Anchor>
  );
  if (model.variantOf !== null)
    return (
      <Text>
        A variant of {link(model.variantOf)}: what isn’t stated here holds as it stands there.
      </Text>
    );
  return (
    <Group gap="md">
      {variants.length > 0 && (
        <Group gap="xs" role="group" aria-label="Variants">
          <Text>Variants:</Text>
          {variants.map(link)}
        </Group>
      )}
      <Button
        variant="default"
        size="sm"
        leftSection={<IconPlus size={16} aria-hidden />}
        onClick={onAdd}
      >
        Add a variant
      </Button>
    </Group>
  );
}
