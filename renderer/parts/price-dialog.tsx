import { Button, Modal, NativeSelect, SimpleGrid, Stack, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { SyntheticEvent } from 'react';
import type { Part } from '../../shared/contract/parts/index.ts';
import { formatRate, markupFor, partPrice } from '../../shared/money/index.ts';
import {
  PRICE_ORIGIN_LABELS,
  PRICE_RULE_LABELS,
  PRICE_RULES,
} from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { MoneyInput } from '../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useMoney, useShop } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import { MarginText } from './margin-text.tsx';

const RULES = PRICE_RULES.map((value) => ({ value, label: PRICE_RULE_LABELS[value] }));

/** What a part costs and how it comes by its price. */
export function PriceDialog({ part, onClose }: { part: Part; onClose: () => void }) {
  const by = useBy();
  const money = useMoney();
  const { rounding, locale } = useShop();
  const { data: rules } = useQuery(deskQuery.till.rules.queryOptions({ input: {} }));
  const { price, cost, priceRule, listPrice, coreCharge } = part;
  const [draft, setDraft, clear] = useDraft(`price.${part.id}`, {
    price,
    cost,
    priceRule,
    listPrice,
    coreCharge,
  });
  const set = (change: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...change }));
  const close = () => {
    clear();
    onClose();
  };
  const reprice = useWrite(deskQuery.parts.reprice.mutationOptions({ onSuccess: close }));
  const errors = fieldErrors(reprice.error);
  const brackets = rules?.markup ?? [];
  const sells = partPrice(draft, brackets, rounding);
  const markup = markupFor(draft.cost, brackets);
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    reprice.mutate({ by, partId: part.id, ...draft });
  };
  return (
    <Modal opened onClose={onClose} title={`Price of ${part.number}`} size="34rem">
      <form onSubmit={send}>
        <Stack gap="sm">
          <NativeSelect
            label="Priced by"
            size="md"
            data-autofocus
            data={RULES}
            value={draft.priceRule}
            onChange={(event) => {
              const rule = PRICE_RULES.find((one) => one === event.currentTarget.value);
              if (rule !== undefined) set({ priceRule: rule });
            }}
          />
          <SimpleGrid cols={2}>
            <MoneyInput
              label="One costs the shop"
              value={draft.cost}
              error={errors.cost}
              onChange={(minor) => set({ cost: minor ?? 0 })}
            />
            <MoneyInput
              label="Fixed price"
              required
              value={draft.price}
              error={errors.price}
              onChange={(minor) => set({ price: minor ?? 0 })}
            />
            <MoneyInput
              label="Supplier’s list price"
              value={draft.listPrice}
              error={errors.listPrice}
              onChange={(minor) => set({ listPrice: minor })}
            />
            <MoneyInput
              label="Core charge"
              description="Until the old part comes back"
              inputWrapperOrder={['label', 'input', 'description', 'error']}
              value={draft.coreCharge}
              error={errors.coreCharge}
              onChange={(minor) => set({ coreCharge: minor ?? 0 })}
            />
          </SimpleGrid>
          <Text fw={600} role="status">
            Sells at {money(sells.price)}: {PRICE_ORIGIN_LABELS[sells.from].toLowerCase()}
            {sells.from === 'cost-and-markup' &&
              markup !== null &&
              `, ${formatRate(markup, locale)}`}
          </Text>
          {draft.priceRule !== 'fixed' && sells.from === 'shelf-price' && (
            <Text size="sm">
              {draft.priceRule === 'list'
                ? 'There is no list price yet: the fixed one holds until there is.'
                : 'A cost and a bracket for it are missing (Office, Prices and limits): the fixed price holds until they are there.'}
            </Text>
          )}
          <MarginText price={sells.price} cost={draft.cost} />
          <RefusalAlert error={reprice.error} />
          <Button type="submit" loading={reprice.isPending} style={{ alignSelf: 'flex-end' }}>
            Save the price
          </Button>
        </Stack>
      </form>
    </Modal>
  );
}
