/** A plain decimal as typed, with point or comma; null when it is not one. */
export const decimal = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
};
