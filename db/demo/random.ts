/**
 * Numbers from 0 up to 1 that look random and are the same for the same seed on any machine: scatter for
 * invented readings and scribbles, nothing else. FNV-1a over the text, then xorshift32 (Marsaglia,
 * Xorshift RNGs, 2003; shifts 13, 17, 5; from memory).
 */
export function scatter(seed: string): () => number {
  let state = 0x81_1c_9d_c5;
  for (const character of seed)
    state = Math.imul(state ^ (character.codePointAt(0) ?? 0), 0x01_00_01_93);
  state = state >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 0x1_00_00_00_00;
  };
}
