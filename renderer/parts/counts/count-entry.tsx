import { type Ref, useState } from 'react';
import type { StockCountId } from '../../../shared/contract/ids.ts';
import type { CountLine } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';

interface CountEntryProps {
  countId: StockCountId;
  line: Pick<CountLine, 'partId' | 'number' | 'unit' | 'counted'>;
  /** It was scanned and is not on the sheet by itself: it takes the focus when it appears. */
  focused: boolean;
  field: Ref<HTMLInputElement>;
  onNext: () => void;
}

/** The figure of one part: kept when the field is left, and with Enter the next part's turn. */
export function CountEntry({ countId, line, focused, field, onNext }: CountEntryProps) {
  const by = useBy();
  const { partId, number, unit } = line;
  const [counted, setCounted] = useState(line.counted);
  const put = useWrite(deskQuery.parts.countPart.mutationOptions());
  const keep = () => {
    if (counted === null || (counted === line.counted && !put.isError)) return;
    if (put.isPending && put.variables?.counted === counted) return;
    put.mutate({ by, countId, partId, counted });
  };
  return (
    <QuantityInput
      ref={field}
      aria-label={`In the bin: ${number}`}
      label=""
      labelProps={{ display: 'none' }}
      unit={unit}
      autoFocus={focused}
      value={counted}
      onChange={setCounted}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || event.nativeEvent.isComposing) return;
        event.preventDefault();
        keep();
        onNext();
      }}
      error={put.error === null ? undefined : refusalOf(put.error).message}
    />
  );
}
