import { APPROVAL_WAY_LABELS, type ApprovalWay } from './vocabulary.ts';

/** Whether a name was typed where a signature is drawn: there is no stroke with a point in it. */
export const isTypedName = ({ strokes }: { strokes: readonly (readonly unknown[])[] }): boolean =>
  strokes.every((stroke) => stroke.length === 0);

/** How a typed name is told from a signature, wherever it is shown or printed. */
export const typedNameWords = (typedBy: string): string => `typed name, entered by ${typedBy}`;

/**
 * How an approval came: `In person`, `In person: typed name, entered by Wren Castellane`.
 *
 * @param typedBy who typed the customer's name in place of a signature; null for a drawn one, or none
 */
export const approvalWords = ({
  how,
  typedBy,
}: {
  how: ApprovalWay;
  typedBy: string | null;
}): string =>
  typedBy === null
    ? APPROVAL_WAY_LABELS[how]
    : `${APPROVAL_WAY_LABELS[how]}: ${typedNameWords(typedBy)}`;

/**
 * Who signed, and by what: `Tess Wheeler`, or `Tess Wheeler, typed name, entered by Wren Castellane`.
 *
 * @param typedBy who typed the name in place of the signature; null for a drawn one
 */
export const signedWords = ({ name, typedBy }: { name: string; typedBy: string | null }): string =>
  typedBy === null ? name : `${name}, ${typedNameWords(typedBy)}`;
