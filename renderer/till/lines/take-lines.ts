import type { LineInput } from '../../../shared/contract/till/index.ts';
import { editableMoney, editableQuantity } from '../../../shared/money/index.ts';
import { type DraftLine, emptyLine, isBlank, type MoneyRules } from './draft-line.ts';

type TakenLine = Pick<LineInput, 'priceFrom' | 'workKind'>;

/** What makes way for the lines that are taken: nothing, or all labour by the hour. */
export type TakenInstead = 'nothing' | 'hourly-labour';

/** Clocked time of one kind of work, and storage, stand on a bill once. */
const stands = (line: DraftLine, taken: TakenLine): boolean =>
  line.behind.priceFrom === taken.priceFrom && line.behind.workKind === taken.workKind;

/**
 * A bill's lines with others that were worked out (clocked time, storage): each takes the place of the one of
 * its sort that stands there already, and else comes below.
 */
export function takeLines(
  lines: readonly DraftLine[],
  taken: readonly LineInput[],
  rules: MoneyRules,
  instead: TakenInstead = 'nothing',
): DraftLine[] {
  const stays = (line: DraftLine): boolean =>
    instead === 'nothing' ||
    line.kind !== 'labour' ||
    line.unit !== 'h' ||
    taken.some((each) => stands(line, each));
  const all = lines.filter((line) => !isBlank(line, rules) && stays(line));
  for (const { description, unit, unitPrice, quantity, kind, ...behind } of taken) {
    const at = all.findIndex((line) => stands(line, behind));
    const empty = emptyLine(all, kind, rules);
    const { partId: _partId, ...carried } = behind;
    const line: DraftLine = {
      ...empty,
      key: all[at]?.key ?? empty.key,
      description: all[at]?.description ?? description,
      quantity: editableQuantity(quantity, rules.locale),
      unit,
      unitPrice: editableMoney(unitPrice, rules.currency, rules.locale),
      behind: carried,
    };
    if (at === -1) all.push(line);
    else all[at] = line;
  }
  return all;
}
