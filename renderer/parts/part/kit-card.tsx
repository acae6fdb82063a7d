import { ActionIcon, Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { IconX } from '@tabler/icons-react';
import { type FormEvent, useState } from 'react';
import { Link } from 'react-router';
import type { PartId } from '../../../shared/contract/ids.ts';
import type { PartDossier } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { PartField } from '../part-field.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import { OpenKitDialog } from './open-kit-dialog.tsx';

/** What is in a kit, and the way to open it. */
export function KitCard({ dossier }: { dossier: PartDossier }) {
  const { part, pieces, inKits } = dossier;
  const by = useBy();
  const { locale } = useShop();
  const [opening, setOpening] = useState(false);
  const [piece, setPiece] = useState<PartId | null>(null);
  const [quantity, setQuantity] = useState<number | null>(1000);
  const set = useWrite(
    deskQuery.parts.setPieces.mutationOptions({
      onSuccess: () => {
        setPiece(null);
        setQuantity(1000);
      },
    }),
  );
  const keep = (next: readonly { partId: PartId; quantity: number }[]) =>
    set.mutate({ by, kitId: part.id, pieces: [...next] });
  const known = pieces.map(({ id, quantity: inOne }) => ({ partId: id, quantity: inOne }));
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (piece === null || quantity === null || quantity === 0) return;
    keep([...known.filter(({ partId }) => partId !== piece), { partId: piece, quantity }]);
  };
  return (
    <Card
      title="What is in it"
      aside={
        pieces.length > 0 && (
          <Button size="sm" variant="default" onClick={() => setOpening(true)}>
            Open a kit
          </Button>
        )
      }
    >
      <Stack gap="sm">
        {pieces.length === 0 && (
          <Text size="sm" c="dimmed">
            A kit that comes in one bag, such as a gasket set, can be opened into its pieces once
            they are named here.
          </Text>
        )}
        {pieces.map(({ id, number, description, unit, quantity: inOne, onHand }) => (
          <Group key={id} gap="xs" wrap="nowrap">
            <Text size="sm" flex={1}>
              {formatQuantity(inOne, locale)} {unit}{' '}
              <Anchor component={Link} inherit to={`/part/${id}`}>
                {number}
              </Anchor>{' '}
              {description}, {formatQuantity(onHand, locale)} on hand singly
            </Text>
            <ActionIcon
              variant="subtle"
              color="gray"
              aria-label={`${number} is not in it`}
              onClick={() => keep(known.filter(({ partId }) => partId !== id))}
            >
              <IconX size={18} aria-hidden />
            </ActionIcon>
          </Group>
        ))}
        {inKits.length > 0 && (
          <Text size="sm">
            It is a piece of{' '}
            {inKits.map((kit, index) => (
              <span key={kit.id}>
                {index > 0 && ', '}
                <Anchor component={Link} inherit to={`/part/${kit.id}`}>
                  {kit.number}
                </Anchor>
              </span>
            ))}
            .
          </Text>
        )}
        <form onSubmit={add} noValidate aria-label="Add a piece">
          <Group align="flex-end" gap="xs">
            <PartField
              label="Piece"
              flex="1 1 12rem"
              value={piece}
              without={part.id}
              onChange={setPiece}
            />
            <QuantityInput
              label="In one kit"
              w="8rem"
              unit=""
              value={quantity}
              onChange={setQuantity}
            />
            <Button type="submit" variant="light" disabled={piece === null} loading={set.isPending}>
              Add
            </Button>
          </Group>
        </form>
        <RefusalAlert error={set.error} />
      </Stack>
      {opening && <OpenKitDialog dossier={dossier} onClose={() => setOpening(false)} />}
    </Card>
  );
}
