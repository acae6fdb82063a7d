import type { TakenIn } from '../content.ts';
import { facts } from './facts.ts';
import { section } from './paragraphs.ts';
import type { Block, Sheet } from './sheet.ts';

/** What came in, in the customer's words and as the counter saw it, and what was left with it. */
export function takenIn(sheet: Sheet, content: TakenIn): Block {
  return section(sheet, 'As taken in', [
    facts(sheet, [
      ['The customer says', content.complaint],
      ['Symptoms seen', content.symptoms.join('; ')],
      ['Condition', content.condition],
      ['Left with it', content.leftWith.join('; ') || 'nothing else'],
      ['Fuel in the tank', content.fuel],
      ['Last service', content.lastService],
    ]),
  ]);
}
