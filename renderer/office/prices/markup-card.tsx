import { ActionIcon, Button, Checkbox, Text } from '@mantine/core';
import { IconPlus, IconTrash } from '@tabler/icons-react';
import type { MarkupBracket } from '../../../shared/contract/till/index.ts';
import { priceAtMarkup } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { RateInput } from '../../common/rate-input.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './prices.module.css';
import type { RulesForm } from './use-rules-form.ts';

const MOST = 20;
/** A thousand per cent. */
const MOST_MARKUP = 10_000_000;
const FIRST: MarkupBracket = { upTo: null, markupPpm: 500_000 };

/** What is put on the cost of parts, by how much they cost, and of outside work. */
export function MarkupCard({ form }: { form: RulesForm }) {
  const { markup, outsideMarkupPpm, pricesIncludeTax } = form.fields;
  const set = (brackets: MarkupBracket[]) => form.set({ markup: brackets });
  const addAbove = () => {
    // The new bracket ends below the last one, which stays the one for all above.
    const last = markup.at(-1);
    const before = markup.at(-2)?.upTo ?? 0;
    set(
      last === undefined
        ? [FIRST]
        : [...markup.slice(0, -1), { ...last, upTo: before === 0 ? 1_000 : before * 2 }, last],
    );
  };
  return (
    <Card title="Parts and outside work">
      <Text size="sm" c="dimmed" mb="xs">
        Parts that go by ‘Cost and markup’ are priced by the first bracket that reaches their cost.
      </Text>
      {markup.map((bracket, index) => (
        <Bracket
          // biome's noArrayIndexKey does not apply: a bracket has no identity but its place.
          key={`bracket-${String(index)}`}
          place={index + 1}
          bracket={bracket}
          last={index === markup.length - 1}
          onChange={(next) => set(markup.with(index, next))}
          onRemove={() => {
            const left = markup.toSpliced(index, 1);
            set(left.map((one, at) => (at === left.length - 1 ? { ...one, upTo: null } : one)));
          }}
        />
      ))}
      {form.errors['rules.markup'] !== undefined && (
        <Text size="sm" c="var(--mantine-color-error)" role="alert">
          {form.errors['rules.markup']}
        </Text>
      )}
      {markup.length < MOST && (
        <Button
          variant="default"
          mt="xs"
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={addAbove}
        >
          Add a bracket
        </Button>
      )}
      <RateInput
        mt="md"
        maw="18rem"
        label="Markup on outside work"
        description="On what the machine shop or another charges"
        most={MOST_MARKUP}
        value={outsideMarkupPpm}
        onChange={(ppm) => form.set({ outsideMarkupPpm: ppm ?? 0 })}
      />
      <Checkbox
        mt="md"
        label="Prices are with tax: it is within them, and not added to them"
        checked={pricesIncludeTax}
        onChange={(event) => form.set({ pricesIncludeTax: event.currentTarget.checked })}
      />
    </Card>
  );
}

interface BracketProps {
  place: number;
  bracket: MarkupBracket;
  last: boolean;
  onChange: (bracket: MarkupBracket) => void;
  onRemove: () => void;
}

function Bracket({ place, bracket, last, onChange, onRemove }: BracketProps) {
  const money = useMoney();
  const { rounding } = useShop();
  const example = bracket.upTo ?? 10_000;
  return (
    <div className={classes.row}>
      {last ? (
        <div className={classes.above}>
          <Text fw={600}>Bracket {place}</Text>
          <Text>{place === 1 ? 'Any cost' : 'All above'}</Text>
        </div>
      ) : (
        <MoneyInput
          label={`Bracket ${place}: costs up to`}
          required
          value={bracket.upTo}
          onChange={(upTo) => upTo !== null && onChange({ ...bracket, upTo })}
        />
      )}
      <RateInput
        label="Markup"
        most={MOST_MARKUP}
        value={bracket.markupPpm}
        description={`${money(example)} sells at ${money(priceAtMarkup(example, bracket.markupPpm, rounding))}`}
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        onChange={(ppm) => onChange({ ...bracket, markupPpm: ppm ?? 0 })}
      />
      <ActionIcon
        variant="default"
        size={42}
        aria-label={`Remove bracket ${place}`}
        onClick={onRemove}
      >
        <IconTrash size={20} aria-hidden />
      </ActionIcon>
    </div>
  );
}
