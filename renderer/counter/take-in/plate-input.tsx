import { fold } from '../../../shared/work/fold.ts';
import { joinMakeAndModel, splitMakeAndModel } from './make-and-model.ts';
import { SuggestingInput, type Suggestion } from './suggesting-input.tsx';

interface PlateInputProps {
  label: string;
  field: 'machine' | 'engine';
  value: string;
  onChange: (text: string) => void;
  knownMakes: readonly string[];
  suggestions: readonly Suggestion[];
  onPick: (value: string) => void;
  /** Said instead of the split, when more is known than that. */
  understood?: string;
  error?: string;
}

/** Make and model as they stand on the plate, in one line; what was understood stands below it. */
export function PlateInput({ field, knownMakes, understood, ...input }: PlateInputProps) {
  return (
    <SuggestingInput
      {...input}
      data-field={field}
      inputWrapperOrder={['label', 'input', 'description', 'error']}
      description={understood ?? splitInWords(input.value, knownMakes)}
      placeholder="as on the plate"
      maxLength={161}
    />
  );
}

function splitInWords(text: string, knownMakes: readonly string[]): string {
  if (text.trim() === '') return 'A make of two words: a comma after it.';
  const { make, model } = splitMakeAndModel(text, knownMakes);
  return model === '' ? `Make ${make}, no model yet` : `Make ${make} · model ${model}`;
}

/** Different makes and models among what was found, those that begin as typed. */
export function platesLike(
  found: readonly { make: string; model: string }[],
  typed: string,
): Suggestion[] {
  const wanted = fold(typed.replaceAll(',', ' '));
  const plates = new Map<string, Suggestion>();
  for (const plate of found) {
    const label = [plate.make, plate.model].filter(Boolean).join(' ');
    if (fold(label).startsWith(wanted) && fold(label) !== wanted)
      plates.set(fold(label), { value: joinMakeAndModel(plate), label });
  }
  return [...plates.values()].slice(0, 8);
}
