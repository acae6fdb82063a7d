import { useEffect, useRef } from 'react';
import { useLocation } from 'react-router';
import type { Account } from '../../shared/contract/till/index.ts';
import { useFarField } from './far-field.ts';
import { focusFirstLine } from './lines/grid-focus.ts';

type Wants = 'opening' | 'payment' | 'nothing';

/**
 * Brings the focus to the field wanted next: the first line of a job without an estimate, the amount of
 * a payment that is due or that somebody came to take (`#payment`), the payment once an invoice is
 * issued. Otherwise it stays where it is.
 */
export function useWantedField({ estimates, invoice, due }: Account, closed: boolean) {
  const page = useRef<HTMLDivElement>(null);
  const paymentAmount = useFarField();
  const toPay = useLocation().hash === '#payment';
  const wants = useRef<Wants>('opening');
  const unpaid = invoice !== null && due > 0;
  const unestimated = estimates.length === 0 && !closed;

  useEffect(() => {
    const wanted = wants.current;
    if (wanted === 'payment' && !unpaid) return;
    wants.current = 'nothing';
    const busy = document.activeElement?.matches('input, textarea, select') === true;
    if (wanted === 'opening' && busy) return;
    if (wanted !== 'nothing' && (unpaid || toPay)) paymentAmount.focus();
    else if (wanted === 'opening' && unestimated) focusFirstLine(page.current);
  }, [unpaid, toPay, unestimated, paymentAmount]);

  return {
    page,
    paymentAmount,
    /** The invoice is on its way: then the money is wanted. */
    expectPayment: () => {
      wants.current = 'payment';
    },
  };
}
