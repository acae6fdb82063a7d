import type { SignedBy } from '../../../shared/contract/fields.ts';
import type { Account, Approval } from '../../../shared/contract/till/index.ts';
import { approvalWords, signedWords } from '../../../shared/work/typed-name.ts';

interface Words {
  money: (minor: number) => string;
  instant: (iso: string) => string;
}

interface ApprovalEvent {
  key: string;
  at: string;
  title: string;
  detail: string;
}

/** All that set the limit of a job, in words, newest first: approvals, overrides, what intake agreed. */
export function approvalEvents(
  account: Account,
  intakeSigned: SignedBy,
  words: Words,
): ApprovalEvent[] {
  const { approvals, overrides, spendingLimit } = account;
  const agreed = [
    ...approvals.map((approval) => ({
      key: `${approval.at} ${approval.estimateNumber}`,
      at: approval.at,
      title: `Up to ${words.money(approval.amount)}`,
      detail: approvalDetail(account, approval, words),
    })),
    ...overrides.map(({ amount, reason, by, at }) => ({
      key: `${at} ${amount}`,
      at,
      title: `Up to ${words.money(amount)}, by the owner`,
      detail: `Not asked of the customer. ${by}, ${words.instant(at)}: ${reason}`,
    })),
  ].sort((a, b) => (a.at < b.at ? 1 : -1));
  if (spendingLimit === null) return agreed;
  const title = `Up to ${words.money(spendingLimit)}`;
  const detail = `Spending limit agreed at intake. Signed by ${signedWords(intakeSigned)}.`;
  return [...agreed, { key: 'intake', at: '', title, detail }];
}

function approvalDetail(account: Account, approval: Approval, { money, instant }: Words): string {
  const { approvedBy, estimateNumber, estimateId, takenBy, at, declined, note } = approval;
  const options = account.estimates.find(({ id }) => id === estimateId)?.options ?? [];
  const label = options.find(({ key }) => key === approval.option)?.label ?? '';
  const how = approvalWords(approval);
  const way = `${how.slice(0, 1).toLowerCase()}${how.slice(1)}`;
  return [
    `${approvedBy}, ${way}, ${estimateNumber}${label === '' ? '' : `, ${label}`}. Taken by ${takenBy}, ${instant(at)}.`,
    ...(declined.length === 0
      ? []
      : [
          `Declined: ${declined.map(({ description, amount }) => `${description} (${money(amount)})`).join(', ')}.`,
        ]),
    ...(note === '' ? [] : [`“${note}”`]),
  ].join(' ');
}
