import { Button, Group, Stack, Text } from '@mantine/core';
import { IconReceiptRefund } from '@tabler/icons-react';
import { useState } from 'react';
import type { CreditNote, Invoice } from '../../../shared/contract/till/index.ts';
import { INVOICE_SORT_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { useMoney } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import { CreditForm } from './credit-form.tsx';

interface IssuedInvoiceProps {
  invoice: Invoice;
  creditNotes: readonly CreditNote[];
}

/** An issued invoice: how it stands, what was credited of it, and where the next credit note is written. */
export function IssuedInvoice({ invoice, creditNotes }: IssuedInvoiceProps) {
  const money = useMoney();
  const format = useFormat();
  const [crediting, setCrediting] = useState(false);
  const { number, sort, totals, lines, wholeLines, open, applied, credited, dueOn } = invoice;
  const left = wholeLines.length < lines.length;
  const what = sort === 'work' ? '' : `${INVOICE_SORT_LABELS[sort]}: `;
  return (
    <Card title={`Invoice ${number}`} aside={<PaperButton paper={invoice.paper} />}>
      <Stack gap="sm">
        <div>
          <Text>
            {what}
            {money(totals.total)}, issued {format.instant(invoice.issuedAt)} by {invoice.issuedBy}.
          </Text>
          <Text>
            {[
              `Paid ${money(applied)}`,
              ...(credited === 0 ? [] : [`credited ${money(credited)}`]),
              open > 0 ? `${money(open)} still open` : left ? 'nothing open' : 'nothing left of it',
            ].join(', ')}
            {dueOn !== null && open > 0 && `, to be paid by ${format.date(dueOn)}`}.
          </Text>
          <Text size="sm" c="dimmed" mt={4}>
            An issued invoice never changes; it is corrected by a credit note.
          </Text>
        </div>
        {creditNotes.length > 0 && (
          <EventList
            label={`Credit notes of invoice ${number}`}
            events={creditNotes.map((note) => ({
              key: note.id,
              title: `Credit note ${note.number}: ${money(note.totals.total)}`,
              detail: `${note.reason} Issued ${format.instant(note.issuedAt)} by ${note.issuedBy}.`,
              paper: <PaperButton paper={note.paper} />,
            }))}
            empty=""
          />
        )}
        {left && (
          <Group>
            <Button
              variant="default"
              leftSection={<IconReceiptRefund size={18} aria-hidden />}
              onClick={() => setCrediting(true)}
            >
              Write a credit note
            </Button>
          </Group>
        )}
        <CreditForm invoice={invoice} opened={crediting} onClose={() => setCrediting(false)} />
      </Stack>
    </Card>
  );
}
