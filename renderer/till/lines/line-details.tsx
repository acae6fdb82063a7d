import { Button, Checkbox, NativeSelect, Text, Textarea } from '@mantine/core';
import { IconArrowBackUp } from '@tabler/icons-react';
import { formatRate } from '../../../shared/money/index.ts';
import { LINE_KIND_LABELS, PRICE_ORIGIN_LABELS } from '../../../shared/work/vocabulary.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { RateInput } from '../../common/rate-input.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { markupOf, withCost, withMarkup, withSuppliesRule, withWorkKind } from './change-line.ts';
import { DiscountInput } from './discount-input.tsx';
import type { DraftLine, LineReading, MoneyRules } from './draft-line.ts';
import classes from './line-details.module.css';
import { MarginWords } from './margin-words.tsx';

interface LineDetailsProps {
  line: DraftLine;
  position: number;
  reading: LineReading;
  rules: MoneyRules;
  showMargin: boolean;
  onChange: (line: DraftLine) => void;
  /** The core of this charge came back: a credit goes below it. */
  onCoreBack: () => void;
}

/** A thousand per cent. */
const MOST_MARKUP = 10_000_000;

const isCore = ({ kind }: DraftLine): boolean => kind === 'core-charge' || kind === 'core-credit';

/** What stands behind a line: where its price comes from, what it costs, what is taken off, what is said of it. */
export function LineDetails(props: LineDetailsProps) {
  const { line, position, reading, rules, showMargin, onChange, onCoreBack } = props;
  const money = useMoney();
  const { behind } = line;
  const change = (part: Partial<DraftLine['behind']>) =>
    onChange({ ...line, behind: { ...behind, ...part } });
  const costed = line.kind === 'part' || line.kind === 'outside';
  return (
    <fieldset className={classes.details}>
      <legend className={classes.legend}>Line {position}, details</legend>
      {line.kind === 'labour' && <WorkKind line={line} rules={rules} onChange={onChange} />}
      {line.kind === 'supplies' && rules.supplies !== null && (
        <SuppliesRule line={line} rules={rules} onChange={onChange} />
      )}
      {!isCore(line) && behind.priceFrom !== 'supplies-rule' && (
        <MoneyInput
          label={line.kind === 'labour' ? 'An hour costs the shop' : 'One costs the shop'}
          value={behind.unitCost}
          onChange={(unitCost) => onChange(withCost(line, unitCost, rules))}
        />
      )}
      {costed && (
        <RateInput
          label="Markup on the cost"
          most={MOST_MARKUP}
          disabled={behind.unitCost === null}
          value={markupOf(line, rules)}
          onChange={(ppm) => ppm !== null && onChange(withMarkup(line, ppm, rules))}
        />
      )}
      {!isCore(line) && (
        <DiscountInput
          label="Discount on the line"
          value={behind.discount}
          onChange={(discount) => change({ discount })}
        />
      )}
      <Textarea
        className={classes.wide}
        label="Note, printed below the line"
        autosize
        minRows={1}
        maxRows={4}
        maxLength={500}
        value={behind.note}
        onChange={(event) => change({ note: event.currentTarget.value })}
      />
      {line.kind === 'core-charge' && (
        <Button
          variant="default"
          className={classes.action}
          leftSection={<IconArrowBackUp size={18} aria-hidden />}
          onClick={onCoreBack}
        >
          It came back: credit {reading.amount === null ? 'it' : money(reading.amount)}
        </Button>
      )}
      <Text size="sm" c="dimmed" className={classes.wide}>
        {LINE_KIND_LABELS[line.kind]}. Price: {PRICE_ORIGIN_LABELS[behind.priceFrom].toLowerCase()}.{' '}
        {showMargin && reading.margin !== null && <MarginWords margin={reading.margin} />}
      </Text>
    </fieldset>
  );
}

interface PartOfDetails {
  line: DraftLine;
  rules: MoneyRules;
  onChange: (line: DraftLine) => void;
}

function WorkKind({ line, rules, onChange }: PartOfDetails) {
  const money = useMoney();
  const { workKind, priceFrom } = line.behind;
  const known = rules.labourRates.some(({ name }) => name === workKind);
  return (
    <NativeSelect
      label="Kind of work"
      description={priceFrom === 'typed' ? 'The price was typed over' : undefined}
      value={workKind}
      data={[
        { value: '', label: `Usual rate, ${money(rules.labourRate)}` },
        ...rules.labourRates.map(({ name, rate }) => ({
          value: name,
          label: `${name}, ${money(rate)}`,
        })),
        ...(known || workKind === ''
          ? []
          : [{ value: workKind, label: `${workKind} (as it was)` }]),
      ]}
      onChange={(event) => onChange(withWorkKind(line, event.currentTarget.value, rules))}
    />
  );
}

function SuppliesRule({ line, rules, onChange }: PartOfDetails) {
  const money = useMoney();
  const { locale } = useShop();
  const { supplies } = rules;
  if (supplies === null) return null;
  const kinds = supplies.kinds.map((kind) => LINE_KIND_LABELS[kind].toLowerCase()).join(', ');
  const most = supplies.cap === null ? '' : `, at most ${money(supplies.cap)}`;
  return (
    <Checkbox
      className={classes.wide}
      label={`By the shop’s rule: ${formatRate(supplies.ppm, locale)} of ${kinds}${most}`}
      checked={line.behind.priceFrom === 'supplies-rule'}
      onChange={(event) => onChange(withSuppliesRule(line, event.currentTarget.checked))}
    />
  );
}
