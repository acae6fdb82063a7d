import { Checkbox } from '@mantine/core';
import type { BilledPart } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { partsInWords } from '../../common/parts-in-words.ts';
import { useShop } from '../../common/shop.tsx';

interface IssuePartsProps {
  /** Billed, not issued and in stock. */
  parts: readonly BilledPart[];
  checked: boolean;
  onChange: (checked: boolean) => void;
}

/** Offers to take off the shelf what the invoice bills; nothing where all of it has left already. */
export function IssueParts({ parts, checked, onChange }: IssuePartsProps) {
  const { locale } = useShop();
  if (parts.length === 0) return null;
  const named = parts.map(
    ({ part, onShelf }) =>
      `${formatQuantity(onShelf, locale)} ${part.unit} ${part.number} ${part.description}`,
  );
  return (
    <Checkbox
      label={`Issue ${partsInWords(parts, locale)} from stock`}
      description={`Billed, and not issued yet: ${named.join('; ')}`}
      checked={checked}
      onChange={(event) => onChange(event.currentTarget.checked)}
    />
  );
}
