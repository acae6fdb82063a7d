import { Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'react-router';
import type { PartId } from '../../../shared/contract/ids.ts';
import type { PartDossier, PartName } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { PartField } from '../part-field.tsx';

/** Which part took this one's place, and whose place it took. */
export function PlaceCard({ dossier }: { dossier: PartDossier }) {
  const { part, supersededBy, current, former } = dossier;
  const by = useBy();
  const [chosen, setChosen] = useState<PartId | null>(null);
  const supersede = useWrite(
    deskQuery.parts.supersede.mutationOptions({ onSuccess: () => setChosen(null) }),
  );
  return (
    <Card title="What took its place">
      <Stack gap="sm">
        {supersededBy === null ? (
          <Text size="sm" c="dimmed">
            This is the part that is bought today.
          </Text>
        ) : (
          <Group gap="sm" justify="space-between">
            <div>
              <Named words="Replaced by" part={supersededBy} />
              {current !== null && current.id !== supersededBy.id && (
                <Named words="Bought today" part={current} />
              )}
            </div>
            <Button
              size="compact-sm"
              variant="default"
              loading={supersede.isPending}
              onClick={() => supersede.mutate({ by, partId: part.id, supersededBy: null })}
            >
              Take that back
            </Button>
          </Group>
        )}
        {former.map((each) => (
          <Named key={each.id} words="It took the place of" part={each} />
        ))}
        <Group align="flex-end" gap="xs">
          <PartField
            label={supersededBy === null ? 'Replaced by' : 'Replaced by another'}
            flex="1 1 12rem"
            value={chosen}
            without={part.id}
            onChange={setChosen}
          />
          <Button
            variant="light"
            disabled={chosen === null}
            loading={supersede.isPending}
            onClick={() => supersede.mutate({ by, partId: part.id, supersededBy: chosen })}
          >
            Say so
          </Button>
        </Group>
        <RefusalAlert error={supersede.error} />
      </Stack>
    </Card>
  );
}

function Named({ words, part }: { words: string; part: PartName }) {
  const { locale } = useShop();
  return (
    <Text size="sm">
      {words}{' '}
      <Anchor component={Link} inherit to={`/part/${part.id}`}>
        {part.number}
      </Anchor>{' '}
      {part.description}, {formatQuantity(part.onHand, locale)} {part.unit} on hand
    </Text>
  );
}
