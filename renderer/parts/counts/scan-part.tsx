import { TextInput } from '@mantine/core';
import { IconBarcode } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { isMisreadGtin } from '../../../shared/work/parts/barcode-digits.ts';
import { desk } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import classes from './counts.module.css';

/** Goes to a part by what is scanned or typed; the field claims what the reader sends. */
export function ScanPart({ onScanned }: { onScanned: (part: Part) => void }) {
  const [number, setNumber] = useState('');
  const [unknown, setUnknown] = useState('');
  const look = useMutation({
    mutationFn: (typed: string) => desk.parts.byNumber({ number: typed }),
    onSuccess: ([hit], typed) => {
      if (hit === undefined) setUnknown(typed);
      else onScanned(hit.part);
    },
  });
  const problem = look.error === null ? unknownWords(unknown) : refusalOf(look.error).message;
  return (
    <form
      data-claims-code
      noValidate
      aria-label="Go to a part"
      className={classes.scan}
      onSubmit={(event) => {
        event.preventDefault();
        const typed = number.trim();
        setNumber('');
        setUnknown('');
        if (typed !== '') look.mutate(typed);
      }}
    >
      <TextInput
        label="Part number or barcode"
        description="Scan what lies in the bin, also what belongs elsewhere"
        leftSection={<IconBarcode size={20} aria-hidden />}
        autoFocus
        autoComplete="off"
        maxLength={120}
        value={number}
        error={problem}
        onChange={(event) => {
          setNumber(event.currentTarget.value);
          setUnknown('');
        }}
      />
    </form>
  );
}

function unknownWords(number: string): string | undefined {
  if (number === '') return undefined;
  return isMisreadGtin(number)
    ? `${number}: the last digit doesn’t go with the others. Scan it again.`
    : `No part here has the number ${number}. Add it on the shelf’s page first.`;
}
